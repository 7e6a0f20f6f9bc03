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
    for (const { parameter, block } of inputs)
      if (block && parameter.kind.shape === "cell") return toError(spec, tooManyCells(parameter, block));
    return calculateAt(spec, inputs, 0, 0);
  }
  return broadcast(spec, inputs);
};

/** A parameter with what came for it. */
interface Input {
  readonly parameter: Parameter<unknown>;
  /** What came, where it is one cell or none; a block of one cell counts as that cell. */
  readonly cell: Cell;
  /** What came, where it is more. */
  readonly block: Matrix | undefined;
}

const toInput = (parameter: Parameter<unknown>, argument: Argument): Input => {
  if (!isMatrix(argument)) return { parameter, cell: argument ?? null, block: undefined };
  const [first = []] = argument;
  const isBlock = first.length > 1 || (argument.length > 1 && first.length > 0);
  return { parameter, cell: isBlock ? null : (first[0] ?? null), block: isBlock ? argument : undefined };
};

const tooManyCells = ({ name }: Parameter<unknown>, block: Matrix): InputError => {
  const [rows, columns] = [block.length, block[0]?.length ?? 0];
  return new InputError(
    `${parameterLabel(name)} takes one value here, got ${counted(rows, "row")} by ${counted(columns, "column")}`,
  );
};

const PAST_THE_SHORTER = new CellError(
  "#N/A",
  "the columns given are of unequal length: there is no value here",
);

/** One answer for each cell of the largest block given where one value is expected, as native functions do. */
const broadcast = (spec: FunctionSpec, inputs: readonly Input[]): Answer => {
  let [rows, columns] = [0, 0];
  for (const { parameter, block } of inputs)
    if (block && parameter.kind.shape === "cell")
      [rows, columns] = [Math.max(rows, block.length), Math.max(columns, block[0]?.length ?? 0)];
  if (rows === 0) return calculateAt(spec, inputs, 0, 0);
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => calculateAt(spec, inputs, row, column) as Cell),
  );
};

/** The cell of a block that stands at this place of the answer; a single row or column repeats. */
const cellAt = (block: Matrix, row: number, column: number): Cell => {
  const line = block.length === 1 ? block[0] : block[row];
  const found = line?.length === 1 ? line[0] : line?.[column];
  return found === undefined ? PAST_THE_SHORTER : found;
};

/** What one calculation is given for a parameter: a cell, or the block that came for a range. */
const inputAt = (input: Input, row: number, column: number): Input =>
  input.block && input.parameter.kind.shape === "cell"
    ? { parameter: input.parameter, cell: cellAt(input.block, row, column), block: undefined }
    : input;

const calculateAt = (spec: FunctionSpec, inputs: readonly Input[], row: number, column: number): Answer => {
  const given = inputs.map((input) => inputAt(input, row, column));
  const error = firstError(given);
  if (error) return error;
  if (isUnfilled(given)) return "";
  try {
    const values = given.map(readValue);
    return allFinite(spec, spec.calculate(...(values as never[])));
  } catch (thrown) {
    return toError(spec, thrown);
  }
};

const firstError = (given: readonly Input[]): CellError | undefined => {
  for (const { cell, block } of given) {
    if (cell instanceof CellError) return cell;
    if (!block) continue;
    for (const line of block) for (const each of line) if (each instanceof CellError) return each;
  }
  return undefined;
};

const isBlankInput = ({ cell, block }: Input): boolean =>
  block ? block.every((line) => line.every(isBlank)) : isBlank(cell);

/** Whether nothing came for any parameter that must be given; a function without such is never unfilled. */
const isUnfilled = (given: readonly Input[]): boolean => {
  let isAnyRequired = false;
  for (const input of given) {
    if (input.parameter.optional) continue;
    if (!isBlankInput(input)) return false;
    isAnyRequired = true;
  }
  return isAnyRequired;
};

const readCells = ({ name, kind }: Parameter<unknown>, cell: Cell, block?: Matrix): unknown => {
  const label = parameterLabel(name);
  return kind.shape === "cell" ? kind.read(cell as Filled, label) : kind.read(block ?? [[cell]], label);
};

const standards = new WeakMap<Parameter<unknown>, { readonly value: unknown }>();

/** What holds where nothing came: read once for each parameter, since a sheet leaves the same out in every row. */
const standardOf = (parameter: Parameter<unknown>): unknown => {
  if (parameter.default === null) return undefined;
  const known = standards.get(parameter);
  if (known) return known.value;
  const value = readCells(parameter, parameter.default);
  standards.set(parameter, { value });
  return value;
};

const readValue = (input: Input): unknown => {
  const { parameter, cell, block } = input;
  if (!isBlankInput(input)) return readCells(parameter, cell, block);
  if (parameter.optional) return standardOf(parameter);
  throw new InputError(`${parameterLabel(parameter.name)} is missing: it takes ${parameter.kind.takes}`);
};

const allFinite = (spec: FunctionSpec, answer: Answer): Answer => {
  const isFit = (cell: Cell): boolean => typeof cell !== "number" || Number.isFinite(cell);
  if (isMatrix(answer) ? answer.every((line) => line.every(isFit)) : isFit(answer)) return answer;
  throw new InputError(`${spec.id} has no finite answer for these values`);
};

const toError = (spec: FunctionSpec, thrown: unknown): CellError =>
  thrown instanceof InputError
    ? new CellError(thrown.code, thrown.message)
    : new CellError(
        "#VALUE!",
        `${spec.id} failed on these values, which is a fault of Gablewright's: ${String(thrown)}`,
      );
