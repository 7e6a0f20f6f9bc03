import type { Filled } from "../../../shared/kinds/kind";
import { InputError } from "../../../shared/inputError";
import { isShortDecimal } from "../../../shared/rounding";
import { labelInWords } from "../../../shared/spec/parameterCaption";
import type { FunctionSpec, Parameter } from "../../../shared/spec/spec";
import { quotedText } from "../../workbook/formula";
import { panelFieldOf } from "./panelNames";

/** The key of a typed value. Functions that ask for the same value share one field of the pane. */
export const typedKey = (spec: FunctionSpec, parameter: Parameter<unknown>): string =>
  panelFieldOf(spec, parameter) ?? parameter.name;

const read = ({ kind }: Parameter<unknown>, typed: Filled, label: string): unknown =>
  kind.shape === "cell" ? kind.read(typed, label) : kind.read([[typed]], label);

/**
 * A typed value as an argument in a formula: a number in the parameter's unit, TRUE or FALSE, or text in quotes. Throws the same
 * InputError as the function itself if it isn't accepted. undefined if an optional value is omitted.
 */
export const typedArgument = (
  spec: FunctionSpec,
  parameter: Parameter<unknown>,
  typed: string,
): string | undefined => {
  const text = typed.trim();
  const label = labelInWords(parameter.label);
  if (text === "") {
    if (parameter.optional) return undefined;
    throw new InputError(`${label} is missing: it takes ${parameter.kind.takes}`);
  }
  const value = read(parameter, text, label);
  // 18' 6" becomes 18.5, but 16 in stays "16 in": 1.3333333333333333 would be hard to recognize.
  if (typeof value === "number" && (isShortDecimal(value) || value === Number(text))) return String(value);
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return quotedText(text);
};
