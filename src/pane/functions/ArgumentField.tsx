import { Button } from "@fluentui/react-button";
import { parameterCaption } from "../../../shared/spec/parameterCaption";
import type { Parameter } from "../../../shared/spec/spec";
import { parameterHelp } from "../../help/parameterHelp";
import { areaAddress } from "../../workbook/address";
import type { Given } from "../../sheets/extend/insertFunction";
import { TextField } from "../controls/TextField";

interface Props {
  readonly parameter: Parameter<unknown>;
  readonly given: Given;
  readonly onType: (typed: string) => void;
  /** Uses the cells that are selected on the sheet. */
  readonly onPick: () => void;
}

const shown = (given: Given): string => {
  if (given.kind === "typed") return given.typed;
  return given.kind === "name" ? given.name : `${given.sheet}, ${areaAddress(given.area)}`;
};

/** One argument of a function: a typed value, or cells selected on the sheet. */
export const ArgumentField = ({ parameter, given, onType, onPick }: Props) => (
  <div class="argument">
    <TextField
      label={`${parameterCaption(parameter)}${parameter.optional ? ", optional" : ""}`}
      name={`argument-${parameter.name}`}
      value={shown(given)}
      describedBy={`help-${parameter.name}`}
      onValue={onType}
    />
    <Button aria-label={`Use selection for ${parameterCaption(parameter)}`} onClick={onPick}>
      Use selection
    </Button>
    <p class="hint" id={`help-${parameter.name}`}>
      {parameterHelp(parameter)}
    </p>
  </div>
);
