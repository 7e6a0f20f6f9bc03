import type { Filled } from "../../../shared/kinds/kind";
import { InputError } from "../../../shared/inputError";
import { isShortDecimal } from "../../../shared/rounding";
import { labelInWords } from "../../../shared/spec/parameterCaption";
import type { FunctionSpec, Parameter } from "../../../shared/spec/spec";
import { panelFieldOf } from "./panelNames";

/** One field of the pane serves every function that asks for the same thing. */
export const typedKey = (spec: FunctionSpec, parameter: Parameter<unknown>): string =>
  panelFieldOf(spec, parameter) ?? parameter.name;

/** Text in a formula: quotes are doubled, so that what was typed can't end the text and go on as a formula. */
export const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

const read = ({ kind }: Parameter<unknown>, typed: Filled, label: string): unknown =>
  kind.shape === "cell" ? kind.read(typed, label) : kind.read([[typed]], label);

/**
 * What a person typed for a parameter, as it goes into a formula: a number in the parameter's unit, TRUE or FALSE, else the text in quotes. It is read by the function's own kind, so a decimal comma or a wrong word is refused here, with the same
 * sentence. undefined: left out, and the function's default holds.
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
  // 18' 6" is 18.5; but 16 in stays "16 in": nobody would know 1.3333333333333333 again.
  if (typeof value === "number" && (isShortDecimal(value) || value === Number(text))) return String(value);
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return quoted(text);
};
