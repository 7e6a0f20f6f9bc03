import type { FunctionSpec } from "../../../../shared/spec/spec";
import { parameterHelp } from "../../../help/parameterHelp";

/** Every parameter and result is a matrix of any type: a single cell arrives as 1 x 1. */
const ANY_BLOCK = { type: "any", dimensionality: "matrix" } as const;

interface ParameterMetadata {
  readonly name: string;
  readonly description: string;
  readonly type: "any";
  readonly dimensionality: "matrix";
  readonly optional: boolean;
}

export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly helpUrl: string;
  readonly parameters: readonly ParameterMetadata[];
  readonly result: typeof ANY_BLOCK;
  /** Errors in cells are passed to the function, so that one of them doesn't fail a whole column. */
  readonly options: { readonly allowErrorForDataTypeAny: true };
}

/** The functions.json that Excel reads, made from the function specifications. */
export const functionsMetadata = (
  catalog: readonly FunctionSpec[],
  siteAddress: string,
): { functions: FunctionMetadata[] } => ({
  functions: catalog.map((spec) => ({
    id: spec.id,
    name: spec.id,
    description: spec.summary,
    helpUrl: new URL(`help/${spec.id}.html`, siteAddress).href,
    parameters: spec.parameters.map((parameter) => ({
      name: parameter.name,
      description: parameterHelp(parameter),
      ...ANY_BLOCK,
      optional: parameter.optional,
    })),
    result: ANY_BLOCK,
    options: { allowErrorForDataTypeAny: true },
  })),
});
