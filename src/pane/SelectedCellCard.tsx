import { useEffect, useState } from "preact/hooks";
import type { PaneHost, SelectedCell } from "./parts/paneHost";

/** Longer formulas are cut off to leave room in the pane. The formula bar shows all of it. */
const FORMULA_SHOWN = 200;

const shortened = (formula: string): string =>
  formula.length > FORMULA_SHOWN ? `${formula.slice(0, FORMULA_SHOWN)}…` : formula;

/** The selected cell: its value, its formula, and the meaning of its error. */
export const SelectedCellCard = ({ watchCell }: { watchCell: NonNullable<PaneHost["watchCell"]> }) => {
  const [cell, setCell] = useState<SelectedCell>();
  useEffect(() => {
    watchCell(setCell);
  }, [watchCell]);
  return (
    <section class="card" aria-labelledby="cell-title">
      <h2 id="cell-title">Selected cell</h2>
      {cell ? (
        <dl class="cell" aria-live="polite">
          <dt>{cell.address}</dt>
          <dd class="cell-shows">{cell.shows === "" ? "blank" : cell.shows}</dd>
          {cell.formula && <dd class="cell-formula">{shortened(cell.formula)}</dd>}
          {cell.sentence && <dd class="cell-sentence">{cell.sentence}</dd>}
        </dl>
      ) : (
        <p class="hint">Select a cell to see its formula, and what any error means.</p>
      )}
    </section>
  );
};
