import { CellError, isBlank, isMatrix, type Answer, type Argument, type Cell, type Matrix } from "./cell";
import { counted } from "./describe";
import { InputError } from "./inputError";
import type { Filled } from "./kinds/kind";
import { parameterLabel } from "./parameterLabel";
import type { FunctionSpec, Parameter } from "./spec";

/**
 * Runs a function on what a host passes: broadcasts columns, passes errors through, keeps unfilled rows quiet,
 * fills in defaults, reads and checks every parameter, and turns whatever is thrown into an error value.
 * It never throws, and it is the only way in which a host calls a function.
 */
export const runFunction = (spec: FunctionSpec, args: readonly Argument[]): Answer => {
  if (args.length > spec.parameters.length)
    return new CellError(
      "#VALUE!",
      `${spec.id} takes at most ${counted(spec.parameters.length, "value")}, got ${args.length}`,
    );
  const inputs = spec.parameters.map((parameter, index) => toInput(parameter, args[index]));
  if (spec.columns) {
    const several = inputs.find((input) => input.block && input.parameter.kind.shape === "cell");
    return several ? toError(spec, tooManyCells(several)) : calculateAt(spec, inputs, 0, 0);
  }
  return broadcast(spec, inputs);
};

/** A parameter with what came for it. A block of one cell counts as that cell. */
interface Input {
  readonly parameter: Parameter<unknown>;
  readonly cells: Matrix;
  /** More than one cell came. */
  readonly block: boolean;
}

const BLANK: Matrix = [[null]];

const toInput = (parameter: Parameter<unknown>, argument: Argument): Input => {
  const given: Matrix = argument === undefined ? BLANK : isMatrix(argument) ? argument : [[argument]];
  const isEmpty = given.length === 0 || given[0]?.length === 0;
  const cells = isEmpty ? BLANK : given;
  return { parameter, cells, block: cells.length > 1 || (cells[0]?.length ?? 0) > 1 };
};

const tooManyCells = ({ parameter, cells }: Input): InputError => {
  const [rows, columns] = [cells.length, cells[0]?.length ?? 0];
  return new InputError(
    `${parameterLabel(parameter.name)} takes one value here, got ${counted(rows, "row")} by ${counted(columns, "column")}`,
  );
};

const PAST_THE_SHORTER = new CellError(
  "#N/A",
  "the columns given are of unequal length: there is no value here",
);

/** One answer for each cell of the largest block given where one value is expected, as native functions do. */
const broadcast = (spec: FunctionSpec, inputs: readonly Input[]): Answer => {
  const blocks = inputs.filter((input) => input.block && input.parameter.kind.shape === "cell");
  if (blocks.length === 0) return calculateAt(spec, inputs, 0, 0);
  const rows = Math.max(...blocks.map(({ cells }) => cells.length));
  const columns = Math.max(...blocks.map(({ cells }) => cells[0]?.length ?? 0));
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => calculateAt(spec, inputs, row, column) as Cell),
  );
};

/** The cell that stands at this place of the answer; a single row or column repeats. */
const cellAt = ({ cells }: Input, row: number, column: number): Cell => {
  const line = cells.length === 1 ? cells[0] : cells[row];
  const cell = line?.length === 1 ? line[0] : line?.[column];
  return cell === undefined ? PAST_THE_SHORTER : cell;
};

const calculateAt = (spec: FunctionSpec, inputs: readonly Input[], row: number, column: number): Answer => {
  const slices = inputs.map((input): Matrix =>
    input.parameter.kind.shape === "cell" ? [[cellAt(input, row, column)]] : input.cells,
  );
  const error = firstError(slices);
  if (error) return error;
  const blanks = slices.map((cells) => cells.every((line) => line.every(isBlank)));
  const requiredBlanks = blanks.filter((_, index) => !spec.parameters[index]?.optional);
  if (requiredBlanks.length > 0 && requiredBlanks.every(Boolean)) return "";
  try {
    const values = spec.parameters.map((parameter, index) =>
      readValue(parameter, slices[index] ?? BLANK, blanks[index] ?? true),
    );
    return allFinite(spec, spec.calculate(...(values as never[])));
  } catch (thrown) {
    return toError(spec, thrown);
  }
};

const firstError = (slices: readonly Matrix[]): CellError | undefined => {
  for (const cells of slices)
    for (const line of cells) for (const cell of line) if (cell instanceof CellError) return cell;
  return undefined;
};

const readValue = (
  { name, kind, optional, default: standard }: Parameter<unknown>,
  cells: Matrix,
  blank: boolean,
): unknown => {
  const label = parameterLabel(name);
  if (blank && !optional) throw new InputError(`${label} is missing: it takes ${kind.takes}`);
  if (blank && standard === null) return undefined;
  const given: Matrix = blank ? [[standard]] : cells;
  return kind.shape === "range" ? kind.read(given, label) : kind.read(given[0]?.[0] as Filled, label);
};

const allFinite = (spec: FunctionSpec, answer: Answer): Answer => {
  const cells = isMatrix(answer) ? answer.flat() : [answer];
  if (cells.every((cell) => typeof cell !== "number" || Number.isFinite(cell))) return answer;
  throw new InputError(`${spec.id} has no finite answer for these values`);
};

const toError = (spec: FunctionSpec, thrown: unknown): CellError =>
  thrown instanceof InputError
    ? new CellError(thrown.code, thrown.message)
    : new CellError(
        "#VALUE!",
        `${spec.id} failed on these values, which is a fault of Gablewright's: ${String(thrown)}`,
      );
