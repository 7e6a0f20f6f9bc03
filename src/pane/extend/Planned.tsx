import { Button } from "@fluentui/react-button";
import { areaAddress, columnLetters } from "../../workbook/address";
import { placementOf } from "../../sheets/extend/mappedColumns";
import type { Survey } from "../../workbook/survey";
import type { CellPatch } from "../../workbook/patch";

interface Props {
  readonly survey: Survey;
  readonly patch: CellPatch;
  readonly notes: readonly string[];
  /** Moves all of it to a column where it fits. */
  readonly onMove?: (column: number) => void;
}

const MOST_FORMULAS = 6;

/** What would be written, where, and what is in the way. Nothing has been written yet. */
export const Planned = ({ survey, patch, notes, onMove }: Props) => {
  const { area, obstacle, freeColumn } = placementOf(survey, patch);
  const formulas = (patch.cells.find((line) => line.some((cell) => cell?.content.kind === "formula")) ?? [])
    .flatMap((cell) => (cell?.content.kind === "formula" ? [cell.content.formula] : []))
    .slice(0, MOST_FORMULAS);
  return (
    <div class="planned" aria-live="polite">
      <p>
        Will write {areaAddress(area)} on "{patch.sheet}". First row:
      </p>
      <ul>
        {formulas.map((formula) => (
          <li key={formula} class="cell-formula">
            {formula}
          </li>
        ))}
      </ul>
      {notes.map((note) => (
        <p key={note} class="hint">
          {note}
        </p>
      ))}
      {obstacle !== undefined && <p class="outcome failed">{obstacle}.</p>}
      {obstacle !== undefined && freeColumn !== undefined && onMove && (
        <Button
          onClick={() => {
            onMove(freeColumn);
          }}
        >
          {`Use column ${columnLetters(freeColumn)} instead`}
        </Button>
      )}
    </div>
  );
};
