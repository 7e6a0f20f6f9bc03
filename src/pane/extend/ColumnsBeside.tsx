import { Button } from "@fluentui/react-button";
import { useMemo, useState } from "preact/hooks";
import { areaAddress } from "../../workbook/address";
import { blockInWords, type Block } from "../../sheets/extend/block";
import { extendPlan } from "../../sheets/extend/extendPlan";
import { resultOptions } from "../../sheets/extend/resultOptions";
import { fillBlanksPlan } from "../../sheets/extend/fillBlanks";
import { guessBlock, mappedColumns, notesFor } from "../../sheets/extend/mappedColumns";
import type { ColumnGuess } from "../../sheets/extend/guessColumns";
import type { Survey } from "../../workbook/survey";
import { patchArea, type CellPatch } from "../../workbook/patch";
import { TextField } from "../controls/TextField";
import { CheckboxField } from "../controls/CheckboxField";
import { ColumnChoices } from "./ColumnChoices";
import { planOrMessage } from "./planOrMessage";
import { Planned } from "./Planned";
import { TypedFields, type Typed } from "./TypedFields";

/** Corrected meanings, by heading. */
export type Meanings = Readonly<Record<string, ColumnGuess>>;

interface Props {
  readonly survey: Survey;
  readonly block: Block;
  readonly typed: Typed;
  readonly onType: (typed: Typed) => void;
  readonly meanings: Meanings;
  readonly onMean: (meanings: Meanings) => void;
  readonly onWrite: (patch: () => CellPatch) => void;
}

/** Columns next to a block: what the headings mean, which results to add, and what would be written. */
export const ColumnsBeside = ({ survey, block, typed, onType, meanings, onMean, onWrite }: Props) => {
  const headingOf = (index: number): string => block.headings[index] ?? "";
  const [guesses, setGuesses] = useState(() =>
    guessBlock(block).map((guess, index) => meanings[headingOf(index)] ?? guess),
  );
  const correct = (corrected: ColumnGuess[]): void => {
    const changes = corrected.flatMap((guess, index) =>
      guess === guesses[index] || headingOf(index) === "" ? [] : [[headingOf(index), guess] as const],
    );
    setGuesses(corrected);
    onMean({ ...meanings, ...Object.fromEntries(changes) });
  };
  /** The headings of the picked results, by function. */
  const [picked, setPicked] = useState<Readonly<Record<string, string>>>({});
  const [firstColumn, setFirstColumn] = useState(block.lastColumn + 1);

  const gap = useMemo(() => fillBlanksPlan(survey, block), [survey, block]);
  const columns = mappedColumns(block, guesses);
  const inputs = { columns, names: survey.names, typed };
  const options = resultOptions(inputs);
  const picks = options.flatMap((option) => {
    const heading = picked[option.spec.id];
    return heading === undefined ? [] : [{ option, heading }];
  });
  const patch = (): CellPatch => extendPlan(block, picks, inputs, firstColumn);
  const planned = planOrMessage(patch);

  const toggle = (id: string, heading: string): void => {
    const { [id]: was, ...others } = picked;
    setPicked(was === undefined ? { ...picked, [id]: heading } : others);
  };

  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        onWrite(patch);
      }}
    >
      <p>Read {blockInWords(block)}.</p>
      {gap && (
        <p>
          {`${areaAddress(patchArea(gap))} is blank, but the block's other rows have results. `}
          <Button
            onClick={() => {
              onWrite(() => gap);
            }}
          >
            Fill with the same formulas
          </Button>
        </p>
      )}
      <ColumnChoices block={block} columns={guesses} onChange={correct} />
      <fieldset>
        <legend>Results to add</legend>
        {options.length === 0 && <p class="hint">No results yet: choose above what the columns mean.</p>}
        {options.map(({ spec, heading, from }) => (
          <div key={spec.id}>
            <CheckboxField
              label={`${heading} from ${from.map((each) => each.heading).join(", ")}`}
              name={`extend-${spec.id}`}
              isChecked={picked[spec.id] !== undefined}
              onCheck={() => {
                toggle(spec.id, heading);
              }}
            />
            {picked[spec.id] !== undefined && (
              <TextField
                label={`Heading of ${heading}`}
                value={picked[spec.id] ?? ""}
                onValue={(value) => {
                  setPicked({ ...picked, [spec.id]: value });
                }}
              />
            )}
          </div>
        ))}
      </fieldset>
      <TypedFields
        fields={picks.flatMap(({ option }) => option.fields)}
        typed={typed}
        areRequiredMarked
        onChange={onType}
      />
      {planned.kind === "patch" ? (
        <Planned
          survey={survey}
          patch={planned.patch}
          notes={notesFor(survey, block, columns)}
          onMove={setFirstColumn}
        />
      ) : (
        <p class="hint" aria-live="polite">
          {planned.message}
        </p>
      )}
      <Button appearance="primary" type="submit">
        Write
      </Button>
    </form>
  );
};
