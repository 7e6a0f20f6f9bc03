import { outlineSpec } from "../../../functions/layout/outline";
import { outlineAreaSpec } from "../../../functions/layout/outlineArea";
import { rafterLengthSpec } from "../../../functions/slope/rafterLength";
import { slopeAreaSpec } from "../../../functions/slope/slopeArea";
import type { FunctionSpec, Parameter } from "../../../shared/spec/spec";
import { a1 } from "../../workbook/address";
import { call } from "../../workbook/formula";
import { PANEL_NAME } from "../panelSheet";
import { meaningOf, type Meaning } from "./meanings";
import { panelNameFor } from "./panelNames";
import { typedArgument, typedKey } from "./typedArgument";
import { convertedCell, unitOf, type UnitName } from "./unit";

/** A column whose meaning the user has confirmed. */
export interface MappedColumn {
  readonly column: number;
  readonly heading: string;
  readonly meaning: Meaning;
  readonly unit: UnitName;
}

/** Where the arguments of formulas come from. */
export interface AvailableInputs {
  readonly columns: readonly MappedColumn[];
  /** The workbook's defined names. */
  readonly names: readonly string[];
  /** Values typed in the pane, by `typedKey`. */
  readonly typed: Readonly<Record<string, string>>;
}

/** A value that the user may type for a function. */
interface TypedParameter {
  readonly spec: FunctionSpec;
  readonly parameter: Parameter<unknown>;
}

/** An argument or a call in each row's formula, the columns that it uses, and the values that may be typed for it. */
export interface RowExpression {
  readonly columns: readonly MappedColumn[];
  readonly typedParameters: readonly TypedParameter[];
  readonly inRow: (row: number) => string;
}

const sameInEveryRow = (text: string): RowExpression => ({
  columns: [],
  typedParameters: [],
  inRow: () => text,
});

const columnExpression = (column: MappedColumn, parameter: Parameter<unknown>): RowExpression => ({
  columns: [column],
  typedParameters: [],
  inRow: (row) => convertedCell(a1({ row, column: column.column }), column.unit, unitOf(parameter)),
});

/** A call without its omitted last arguments. */
const callExpression = (spec: FunctionSpec, args: readonly (RowExpression | undefined)[]): RowExpression => {
  const given = args.slice(0, args.findLastIndex((each) => each !== undefined) + 1);
  return {
    columns: [...new Set(given.flatMap((each) => each?.columns ?? []))],
    typedParameters: given.flatMap((each) => each?.typedParameters ?? []),
    inRow: (row) => call(spec, ...given.map((each) => each?.inRow(row) ?? "")),
  };
};

const typedFor = (spec: FunctionSpec, parameter: Parameter<unknown>, { typed }: AvailableInputs): string =>
  typed[typedKey(spec, parameter)] ?? "";

/** Typed values are checked only when the formula is written, so a typing error doesn't remove a result from the list. */
const typedLater = (
  spec: FunctionSpec,
  parameter: Parameter<unknown>,
  inputs: AvailableInputs,
): RowExpression | undefined => {
  const typed = typedFor(spec, parameter, inputs);
  if (typed.trim() === "") return undefined;
  return { columns: [], typedParameters: [], inRow: () => typedArgument(spec, parameter, typed) ?? "" };
};

type Source = (inputs: AvailableInputs) => RowExpression | undefined;

/**
 * A call of a function whose required parameters all come from columns. Its optional values can be typed as if the function
 * itself had been picked, so an overhang counts in all results or in none. `given` fixes some arguments instead; then no
 * others can be typed.
 */
const fromColumns =
  (spec: FunctionSpec, given: Readonly<Record<string, string>> = {}): Source =>
  (inputs) => {
    const asks: TypedParameter[] = [];
    const args = spec.parameters.map((parameter) => {
      const column = inputs.columns.find(({ meaning }) => meaning === meaningOf(parameter));
      if (column) return columnExpression(column, parameter);
      const fixed = given[parameter.name];
      if (fixed !== undefined) return sameInEveryRow(fixed);
      if (!parameter.optional) return derivedExpression(parameter, inputs);
      if (Object.keys(given).length > 0) return undefined;
      asks.push({ spec, parameter });
      return typedLater(spec, parameter, inputs);
    });
    const isComplete = args.every((arg, index) => arg !== undefined || spec.parameters[index]?.optional);
    if (!isComplete) return undefined;
    const expression = callExpression(spec, args);
    return { ...expression, typedParameters: [...expression.typedParameters, ...asks] };
  };

/**
 * Values that other columns give if no column has them: a slope length from run and pitch, a plane's corners from its
 * measurements, its area from those or from the plan area.
 */
const DERIVED: Readonly<Record<Meaning, readonly Source[]>> = {
  slopeLength: [fromColumns(rafterLengthSpec)],
  outline: [fromColumns(outlineSpec, { shape: '"rectangle"' })],
  area: [fromColumns(slopeAreaSpec), fromColumns(outlineAreaSpec)],
};

const derivedExpression = (
  parameter: Parameter<unknown>,
  inputs: AvailableInputs,
): RowExpression | undefined => {
  for (const source of DERIVED[meaningOf(parameter)] ?? []) {
    const expression = source(inputs);
    if (expression) return expression;
  }
  return undefined;
};

/** Trim, clips and nails follow the eave if no column is a length of its own. */
const alongEave = (
  { concept }: FunctionSpec,
  parameter: Parameter<unknown>,
  { columns }: AvailableInputs,
): RowExpression | undefined => {
  const eave = columns.find(({ meaning }) => meaning === "eave");
  return concept === "trim" && meaningOf(parameter) === "length" && eave
    ? columnExpression(eave, parameter)
    : undefined;
};

const nameExpression = (
  spec: FunctionSpec,
  parameter: Parameter<unknown>,
  { names }: AvailableInputs,
): RowExpression | undefined => {
  const name = parameter.name === "panel" ? PANEL_NAME : panelNameFor(spec, parameter);
  return name !== undefined && names.some((each) => each.toLowerCase() === name.toLowerCase())
    ? sameInEveryRow(name)
    : undefined;
};

/** A parameter's argument, from a column or a name; undefined if it must be typed. */
export const inputExpression = (
  spec: FunctionSpec,
  parameter: Parameter<unknown>,
  inputs: AvailableInputs,
): RowExpression | undefined => {
  const column = inputs.columns.find(({ meaning }) => meaning === meaningOf(parameter));
  if (column) return columnExpression(column, parameter);
  return (
    derivedExpression(parameter, inputs) ??
    alongEave(spec, parameter, inputs) ??
    nameExpression(spec, parameter, inputs)
  );
};

/** The whole call of a function in each row. Throws an InputError if a value is missing or not accepted. */
export const resultExpression = (spec: FunctionSpec, inputs: AvailableInputs): RowExpression =>
  callExpression(
    spec,
    spec.parameters.map((parameter) => {
      const supplied = inputExpression(spec, parameter, inputs);
      if (supplied) return supplied;
      const argument = typedArgument(spec, parameter, typedFor(spec, parameter, inputs));
      return argument === undefined ? undefined : sameInEveryRow(argument);
    }),
  );
