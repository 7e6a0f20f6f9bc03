import { Button } from "@fluentui/react-button";
import { useState } from "preact/hooks";
import { blockInWords, type Block } from "../../sheets/extend/block";
import { extendPlan } from "../../sheets/extend/extendPlan";
import { offersFor } from "../../sheets/extend/offers";
import { guessBlock, meantColumns, notesOn } from "../../sheets/extend/proposal";
import type { Survey } from "../../sheets/extend/survey";
import type { CellPatch } from "../../sheets/patch";
import { TextField } from "../controls/TextField";
import { Tick } from "../controls/Tick";
import { ColumnChoices } from "./ColumnChoices";
import { planOrSentence } from "./planOrSentence";
import { Planned } from "./Planned";
import { TypedFields, type Typed } from "./TypedFields";

interface Props {
  readonly survey: Survey;
  readonly block: Block;
  readonly onWrite: (patch: () => CellPatch) => void;
}

/** Columns beside a block: what its headings mean, which results to add, what would be written. */
export const Beside = ({ survey, block, onWrite }: Props) => {
  const [guesses, setGuesses] = useState(() => guessBlock(block));
  /** The headings of the results that are picked, by function. */
  const [picked, setPicked] = useState<Readonly<Record<string, string>>>({});
  const [typed, setTyped] = useState<Typed>({});
  const [firstColumn, setFirstColumn] = useState(block.lastColumn + 1);

  const columns = meantColumns(block, guesses);
  const supplies = { columns, names: survey.names, typed };
  const offers = offersFor(supplies);
  const picks = offers.flatMap((offer) => {
    const heading = picked[offer.spec.id];
    return heading === undefined ? [] : [{ offer, heading }];
  });
  const patch = (): CellPatch => extendPlan(block, picks, supplies, firstColumn);
  const planned = planOrSentence(patch);

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
      <ColumnChoices block={block} columns={guesses} onChange={setGuesses} />
      <fieldset>
        <legend>Results to add</legend>
        {offers.length === 0 && <p class="hint">These columns give nothing yet: say above what they hold.</p>}
        {offers.map(({ spec, heading, from }) => (
          <div key={spec.id}>
            <Tick
              label={`${heading} from ${from.map((each) => each.heading).join(", ")}`}
              name={`extend-${spec.id}`}
              isTicked={picked[spec.id] !== undefined}
              onTick={() => {
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
        fields={picks.flatMap(({ offer }) => offer.fields)}
        typed={typed}
        areNeeded
        onChange={setTyped}
      />
      {planned.kind === "patch" ? (
        <Planned
          survey={survey}
          patch={planned.patch}
          notes={notesOn(survey, block, columns)}
          onMove={setFirstColumn}
        />
      ) : (
        <p class="hint" aria-live="polite">
          {planned.sentence}
        </p>
      )}
      <Button appearance="primary" type="submit">
        Write
      </Button>
    </form>
  );
};
