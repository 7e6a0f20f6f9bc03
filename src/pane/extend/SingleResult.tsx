import { Button } from "@fluentui/react-button";
import { useState } from "preact/hooks";
import { oneCellPlan, smallBlockPlan } from "../../sheets/extend/singleResultPlan";
import { optionById, singleResultOptions } from "../../sheets/extend/resultOptions";
import type { Survey } from "../../workbook/survey";
import type { CellPatch } from "../../workbook/patch";
import { ChoiceField } from "../controls/ChoiceField";
import { TextField } from "../controls/TextField";
import { planOrMessage } from "./planOrMessage";
import { Planned } from "./Planned";
import { TypedFields, type Typed } from "./TypedFields";

interface Props {
  readonly survey: Survey;
  readonly shape: "cell" | "block";
  readonly typed: Typed;
  readonly onType: (typed: Typed) => void;
  readonly onWrite: (patch: () => CellPatch) => void;
}

/** One result at the selection: one cell, or a small block with cells for its inputs. */
export const SingleResult = ({ survey, shape, typed, onType, onWrite }: Props) => {
  const options = singleResultOptions(survey.names);
  const [id, setId] = useState("COURSES");
  const [heading, setHeading] = useState("");
  const [column, setColumn] = useState(survey.selected.from.column);

  const option = optionById(options, id);
  const at = { row: survey.selected.from.row, column };
  const inputs = { names: survey.names, typed };
  const patch = (): CellPatch =>
    shape === "cell"
      ? oneCellPlan(survey.sheet, at, option, inputs)
      : smallBlockPlan(survey.sheet, at, { option, heading }, inputs);
  const planned = planOrMessage(patch);

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
        choices={options.map(({ spec, heading: label }) => ({ value: spec.id, label }))}
        onValue={setId}
      />
      <p class="hint">{option.spec.summary}</p>
      {shape === "block" && (
        <TextField
          label="Heading"
          name="extend-heading"
          value={heading}
          placeholder={option.heading}
          onValue={setHeading}
        />
      )}
      <TypedFields
        fields={option.fields}
        typed={typed}
        areRequiredMarked={shape === "cell"}
        onChange={onType}
      />
      {planned.kind === "patch" ? (
        <Planned survey={survey} patch={planned.patch} notes={[]} onMove={setColumn} />
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
