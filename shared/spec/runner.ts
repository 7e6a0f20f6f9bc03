import { CellError, isBlank, isMatrix, type Answer, type Argument, type Cell, type Matrix } from "../cell";
import { counted } from "../describe";
import { InputError } from "../inputError";
import { readAs, type Filled } from "../kinds/kind";
import type { FunctionSpec, Parameter } from "./spec";

/**
 * Runs a function on what a host passes: broadcasts columns, passes errors through, keeps unfilled rows quiet,
 * fills in defaults, reads and checks every parameter, and turns whatever is thrown into an error value.
 * It never throws, and it is the only way in which a host calls a function.
 */
export const runFunction = (spec: FunctionSpec, args: readonly Argument[]): Answer => {
  const { parameters } = spec;
  if (args.length > parameters.length)
    return new CellError(
      "#VALUE!",
      `${spec.id} takes at most ${counted(parameters.length, "value")}, got ${args.length}`,
    );
  // A sheet of many rows calls with single cells, as they come.
  if (!args.some(isMatrix)) return calculateAt(spec, args);
  const given = args.map(unwrapped);
  const spread = parameters.find((parameter, index) => isSpread(parameter, given[index]));
  if (!spread) return calculateAt(spec, given);
  if (!spec.columns) return broadcast(spec, given);
  return toError(spec, tooManyCells(spread, given[parameters.indexOf(spread)] as Matrix));
};

/** A block of one cell counts as that cell, and one of none as a blank. */
const unwrapped = (argument: Argument): Argument => {
  if (!isMatrix(argument)) return argument;
  const [first = []] = argument;
  const isBlock = first.length > 1 || (argument.length > 1 && first.length > 0);
  return isBlock ? argument : first[0];
};

/** Whether a block came where one cell is expected. */
const isSpread = ({ kind }: Parameter<unknown>, given: Argument): given is Matrix =>
  kind.shape === "cell" && isMatrix(given);

const tooManyCells = ({ label }: Parameter<unknown>, block: Matrix): InputError => {
  const [rows, columns] = [block.length, block[0]?.length ?? 0];
  return new InputError(
    `${label} takes one value here, got ${counted(rows, "row")} by ${counted(columns, "column")}`,
  );
};

const PAST_THE_SHORTER = new CellError(
  "#N/A",
  "the columns given are of unequal length: there is no value here",
);

/** One answer for each cell of the largest block given where one value is expected, as native functions do. */
const broadcast = (spec: FunctionSpec, given: readonly Argument[]): Answer => {
  let [rows, columns] = [0, 0];
  spec.parameters.forEach((parameter, index) => {
    const block = given[index];
    if (isSpread(parameter, block))
      [rows, columns] = [Math.max(rows, block.length), Math.max(columns, block[0]?.length ?? 0)];
  });
  const givenAt = (row: number, column: number): Argument[] =>
    spec.parameters.map((parameter, index) => {
      const here = given[index];
      return isSpread(parameter, here) ? cellAt(here, row, column) : here;
    });
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => calculateAt(spec, givenAt(row, column)) as Cell),
  );
};

/** The cell of a block at this position in the answer; a single row or column repeats. */
const cellAt = (block: Matrix, row: number, column: number): Cell => {
  const line = block.length === 1 ? block[0] : block[row];
  const found = line?.length === 1 ? line[0] : line?.[column];
  return found === undefined ? PAST_THE_SHORTER : found;
};

const calculateAt = (spec: FunctionSpec, given: readonly Argument[]): Answer => {
  const error = firstError(given);
  if (error) return error;
  if (isUnfilled(spec, given)) return "";
  try {
    // A loop, as a map takes longer: this is where a sheet of many rows spends its time.
    const values: unknown[] = [];
    for (const parameter of spec.parameters) values.push(readValue(parameter, given[values.length]));
    return allFinite(spec, spec.calculate(...(values as never[])));
  } catch (thrown) {
    return toError(spec, thrown);
  }
};

const firstError = (given: readonly Argument[]): CellError | undefined => {
  for (const each of given) {
    if (each instanceof CellError) return each;
    if (!isMatrix(each)) continue;
    for (const line of each) for (const cell of line) if (cell instanceof CellError) return cell;
  }
  return undefined;
};

const isBlankArgument = (given: Argument): boolean =>
  isMatrix(given) ? given.every((line) => line.every(isBlank)) : isBlank(given);

/** Whether nothing came for any parameter that must be given; a function without such is never unfilled. */
const isUnfilled = ({ parameters }: FunctionSpec, given: readonly Argument[]): boolean => {
  let isAnyNeeded = false;
  // A loop, as in calculateAt.
  for (let index = 0; index < parameters.length; index++) {
    if (parameters[index]?.optional) continue;
    if (!isBlankArgument(given[index])) return false;
    isAnyNeeded = true;
  }
  return isAnyNeeded;
};

const readValue = ({ kind, label, optional, standard }: Parameter<unknown>, given: Argument): unknown => {
  if (!isBlankArgument(given)) return readAs(kind, given as Filled | Matrix, label);
  if (optional) return standard;
  throw new InputError(`${label} is missing: it takes ${kind.takes}`);
};

const isFit = (cell: Cell): boolean => typeof cell !== "number" || Number.isFinite(cell);

const allFinite = (spec: FunctionSpec, answer: Answer): Answer => {
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
