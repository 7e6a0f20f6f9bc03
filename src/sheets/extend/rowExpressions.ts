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

/** A column whose meaning a person has confirmed. */
export interface MappedColumn {
  readonly column: number;
  readonly heading: string;
  readonly meaning: Meaning;
  readonly unit: UnitName;
}

/** Where formulas find what their functions take. */
export interface AvailableInputs {
  readonly columns: readonly MappedColumn[];
  /** Names that the workbook has. */
  readonly names: readonly string[];
  /** What a person typed in the pane, by `typedKey`. */
  readonly typed: Readonly<Record<string, string>>;
}

/** A value that a person may type for a function. */
interface Asked {
  readonly spec: FunctionSpec;
  readonly parameter: Parameter<unknown>;
}

/** An argument as it stands in a row's formula, the columns that it reads, and what may be typed for it. */
export interface RowExpression {
  readonly columns: readonly MappedColumn[];
  readonly typedParameters: readonly Asked[];
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

/** A call whose arguments at the end may be left out. */
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

/** What was typed is read only as the formula is written: a wrong word takes no result off the list. */
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
 * A function of columns that are there: only where every required parameter of it comes from one. Its optional values are
 * asked for as if the function itself had been picked, so an overhang counts in every result or in none; but not where a
 * standard is given for it, which leaves nothing else open.
 */
const fromColumns =
  (spec: FunctionSpec, given: Readonly<Record<string, string>> = {}): Source =>
  (inputs) => {
    const asks: Asked[] = [];
    const args = spec.parameters.map((parameter) => {
      const column = inputs.columns.find(({ meaning }) => meaning === meaningOf(parameter));
      if (column) return columnExpression(column, parameter);
      const standard = given[parameter.name];
      if (standard !== undefined) return sameInEveryRow(standard);
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
 * What other columns give where none has it: a slope's length from run and pitch, a plane's corners from its measures, its
 * area from them or from the plan.
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

/** Trim, clips and nails go along the eave where no column is a length of its own. */
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

/** What a parameter's argument is without asking anybody. */
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

/** The whole call of a function in each row; an InputError says what is missing or not understood. */
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
