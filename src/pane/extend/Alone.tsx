import { Button } from "@fluentui/react-button";
import { useState } from "preact/hooks";
import { oneCellPlan, smallBlockPlan } from "../../sheets/extend/alonePlan";
import { offerById, offersAlone } from "../../sheets/extend/offers";
import type { Survey } from "../../workbook/survey";
import type { CellPatch } from "../../workbook/patch";
import { ChoiceField } from "../controls/ChoiceField";
import { TextField } from "../controls/TextField";
import { planOrSentence } from "./planOrSentence";
import { Planned } from "./Planned";
import { TypedFields, type Typed } from "./TypedFields";

interface Props {
  readonly survey: Survey;
  readonly shape: "cell" | "block";
  readonly typed: Typed;
  readonly onType: (typed: Typed) => void;
  readonly onWrite: (patch: () => CellPatch) => void;
}

/** One result at the selection, in a cell or with cells for what it takes. */
export const Alone = ({ survey, shape, typed, onType, onWrite }: Props) => {
  const offers = offersAlone(survey.names);
  const [id, setId] = useState("COURSES");
  const [heading, setHeading] = useState("");
  const [column, setColumn] = useState(survey.selected.from.column);

  const offer = offerById(offers, id);
  const at = { row: survey.selected.from.row, column };
  const supplies = { names: survey.names, typed };
  const patch = (): CellPatch =>
    shape === "cell"
      ? oneCellPlan(survey.sheet, at, offer, supplies)
      : smallBlockPlan(survey.sheet, at, { offer, heading }, supplies);
  const planned = planOrSentence(patch);

  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        onWrite(patch);
      }}
    >
      <ChoiceField
        label="Result"
        name="extend-result"
        value={id}
        choices={offers.map(({ spec, heading: label }) => ({ value: spec.id, label }))}
        onValue={setId}
      />
      <p class="hint">{offer.spec.summary}</p>
      {shape === "block" && (
        <TextField
          label="Heading"
          name="extend-heading"
          value={heading}
          placeholder={offer.heading}
          onValue={setHeading}
        />
      )}
      <TypedFields fields={offer.fields} typed={typed} areNeeded={shape === "cell"} onChange={onType} />
      {planned.kind === "patch" ? (
        <Planned survey={survey} patch={planned.patch} notes={[]} onMove={setColumn} />
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
