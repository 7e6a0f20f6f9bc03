import type { FunctionSpec } from "../../../../shared/spec/spec";
import { parameterHelp } from "../../../help/parameterHelp";

/** Every parameter and result is a block of anything: single cells arrive as 1 x 1, and columns broadcast. */
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
  /** Errors in cells reach the function, so that one of them doesn't blank a whole column. */
  readonly options: { readonly allowErrorForDataTypeAny: true };
}

/** The functions.json that Excel reads, in its documented form, made from the specifications. */
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
