import type { Answer, Argument, Cell } from "../../../../shared/cell";
import { runFunction } from "../../../../shared/spec/runner";
import type { FunctionSpec } from "../../../../shared/spec/spec";
import { parameterHelp } from "../../../help/parameterHelp";

/** A function as the local workbook needs it; `call` is synchronous, pure and never throws. */
export interface CustomFunction {
  readonly id: string;
  readonly summary: string;
  readonly parameters: readonly {
    readonly name: string;
    readonly summary: string;
    readonly optional: boolean;
    readonly example: string;
  }[];
  call(...args: Argument[]): Answer;
}

const exampleText = (argument: Argument): string => {
  if (Array.isArray(argument)) return "A1:B4";
  return argument === undefined
    ? ""
    : typeof argument === "string"
      ? `"${argument}"`
      : String(argument as Cell);
};

/** A function of the catalog, as the local workbook needs it. */
export const customFunction = (spec: FunctionSpec): CustomFunction => ({
  id: spec.id,
  summary: spec.summary,
  parameters: spec.parameters.map((parameter, index) => ({
    name: parameter.name,
    summary: parameterHelp(parameter),
    optional: parameter.optional,
    example: exampleText(spec.examples[0]?.args[index] ?? parameter.default),
  })),
  call: (...args) => runFunction(spec, args),
});
