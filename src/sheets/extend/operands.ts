import { outlineSpec } from "../../../functions/layout/outline";
import { outlineAreaSpec } from "../../../functions/layout/outlineArea";
import { rafterLengthSpec } from "../../../functions/slope/rafterLength";
import { slopeAreaSpec } from "../../../functions/slope/slopeArea";
import type { FunctionSpec, Parameter } from "../../../shared/spec/spec";
import { a1 } from "../../workbook/address";
import { call } from "../../workbook/formula";
import { PANEL_NAME } from "../panelSheet";
import { meaningOf, type Meaning } from "./meanings";
import { nameFor } from "./panelNames";
import { typedArgument, typedKey } from "./typed";
import { converted, unitOf, type UnitName } from "./unit";

/** A column whose meaning a person has confirmed. */
export interface MeantColumn {
  readonly column: number;
  readonly heading: string;
  readonly meaning: Meaning;
  readonly unit: UnitName;
}

/** Where formulas find what their functions take. */
export interface Supplies {
  readonly columns: readonly MeantColumn[];
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
export interface Operand {
  readonly columns: readonly MeantColumn[];
  readonly asks: readonly Asked[];
  readonly inRow: (row: number) => string;
}

const everywhere = (text: string): Operand => ({ columns: [], asks: [], inRow: () => text });

const columnOperand = (column: MeantColumn, parameter: Parameter<unknown>): Operand => ({
  columns: [column],
  asks: [],
  inRow: (row) => converted(a1({ row, column: column.column }), column.unit, unitOf(parameter)),
});

/** A call whose arguments at the end may be left out. */
const callOperand = (spec: FunctionSpec, args: readonly (Operand | undefined)[]): Operand => {
  const given = args.slice(0, args.findLastIndex((each) => each !== undefined) + 1);
  return {
    columns: [...new Set(given.flatMap((each) => each?.columns ?? []))],
    asks: given.flatMap((each) => each?.asks ?? []),
    inRow: (row) => call(spec, ...given.map((each) => each?.inRow(row) ?? "")),
  };
};

const typedFor = (spec: FunctionSpec, parameter: Parameter<unknown>, { typed }: Supplies): string =>
  typed[typedKey(spec, parameter)] ?? "";

/** What was typed is read only as the formula is written: a wrong word takes no result off the list. */
const typedLater = (
  spec: FunctionSpec,
  parameter: Parameter<unknown>,
  supplies: Supplies,
): Operand | undefined => {
  const typed = typedFor(spec, parameter, supplies);
  if (typed.trim() === "") return undefined;
  return { columns: [], asks: [], inRow: () => typedArgument(spec, parameter, typed) ?? "" };
};

type Source = (supplies: Supplies) => Operand | undefined;

/**
 * A function of columns that are there: only where every required parameter of it comes from one. Its optional values are
 * asked for as if the function itself had been picked, so an overhang counts in every result or in none; but not where a
 * standard is given for it, which leaves nothing else open.
 */
const fromColumns =
  (spec: FunctionSpec, given: Readonly<Record<string, string>> = {}): Source =>
  (supplies) => {
    const asks: Asked[] = [];
    const args = spec.parameters.map((parameter) => {
      const column = supplies.columns.find(({ meaning }) => meaning === meaningOf(parameter));
      if (column) return columnOperand(column, parameter);
      const standard = given[parameter.name];
      if (standard !== undefined) return everywhere(standard);
      if (!parameter.optional) return derivedFor(parameter, supplies);
      if (Object.keys(given).length > 0) return undefined;
      asks.push({ spec, parameter });
      return typedLater(spec, parameter, supplies);
    });
    const isComplete = args.every((arg, index) => arg !== undefined || spec.parameters[index]?.optional);
    if (!isComplete) return undefined;
    const operand = callOperand(spec, args);
    return { ...operand, asks: [...operand.asks, ...asks] };
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

const derivedFor = (parameter: Parameter<unknown>, supplies: Supplies): Operand | undefined => {
  for (const source of DERIVED[meaningOf(parameter)] ?? []) {
    const operand = source(supplies);
    if (operand) return operand;
  }
  return undefined;
};

/** Trim, clips and nails go along the eave where no column is a length of its own. */
const alongEave = (
  { concept }: FunctionSpec,
  parameter: Parameter<unknown>,
  { columns }: Supplies,
): Operand | undefined => {
  const eave = columns.find(({ meaning }) => meaning === "eave");
  return concept === "trim" && meaningOf(parameter) === "length" && eave
    ? columnOperand(eave, parameter)
    : undefined;
};

const namedOperand = (
  spec: FunctionSpec,
  parameter: Parameter<unknown>,
  { names }: Supplies,
): Operand | undefined => {
  const name = parameter.name === "panel" ? PANEL_NAME : nameFor(spec, parameter);
  return name !== undefined && names.some((each) => each.toLowerCase() === name.toLowerCase())
    ? everywhere(name)
    : undefined;
};

/** What a parameter's argument is without asking anybody. */
export const suppliedOperand = (
  spec: FunctionSpec,
  parameter: Parameter<unknown>,
  supplies: Supplies,
): Operand | undefined => {
  const column = supplies.columns.find(({ meaning }) => meaning === meaningOf(parameter));
  if (column) return columnOperand(column, parameter);
  return (
    derivedFor(parameter, supplies) ??
    alongEave(spec, parameter, supplies) ??
    namedOperand(spec, parameter, supplies)
  );
};

/** The whole call of a function in each row; an InputError says what is missing or not understood. */
export const resultOperand = (spec: FunctionSpec, supplies: Supplies): Operand =>
  callOperand(
    spec,
    spec.parameters.map((parameter) => {
      const supplied = suppliedOperand(spec, parameter, supplies);
      if (supplied) return supplied;
      const argument = typedArgument(spec, parameter, typedFor(spec, parameter, supplies));
      return argument === undefined ? undefined : everywhere(argument);
    }),
  );
