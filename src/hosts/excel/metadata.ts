import type { FunctionSpec, Parameter } from "../../../shared/spec";

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
  readonly parameters: readonly ParameterMetadata[];
  readonly result: typeof ANY_BLOCK;
  /** Errors in cells reach the function, so that one of them doesn't blank a whole column. */
  readonly options: { readonly allowErrorForDataTypeAny: true };
}

/** What a person reads beside a parameter: its meaning, and what holds if it is left out. */
export const parameterHelp = ({ summary, default: standard }: Parameter<unknown>): string =>
  standard === null ? summary : `${summary} ${describeDefault(standard)}`;

const describeDefault = (standard: Parameter<unknown>["default"]): string =>
  typeof standard === "boolean"
    ? `${standard ? "TRUE" : "FALSE"} if left out.`
    : `${String(standard)} if left out.`;

/** The functions.json that Excel reads, in its documented form, made from the specifications. */
export const functionsMetadata = (catalogue: readonly FunctionSpec[]): { functions: FunctionMetadata[] } => ({
  functions: catalogue.map((spec) => ({
    id: spec.id,
    name: spec.id,
    description: spec.summary,
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
