import {
  CellError,
  isMatrix,
  type Answer,
  type Argument,
  type Cell,
  type Matrix,
} from "../../../../shared/cell";

/** The part of Excel's custom functions runtime that we use. Tests pass a stand-in. */
export type ExcelRuntime = Pick<typeof CustomFunctions, "associate" | "Error" | "ErrorCode">;

/** Excel passes an error as an entity with its text. */
const isErrorEntity = (value: unknown): value is { basicValue: string } =>
  typeof value === "object" &&
  value !== null &&
  "type" in value &&
  value.type === "Error" &&
  "basicValue" in value;

const toCell = (value: unknown): Cell => {
  if (typeof value === "number" || typeof value === "string" || typeof value === "boolean") return value;
  if (isErrorEntity(value))
    return new CellError(value.basicValue, "an error in a cell that this one refers to");
  return null;
};

/** Converts what Excel passes for one parameter: a block, a single value, or null where it is omitted. */
export const toArgument = (value: unknown): Argument => {
  if (value === null || value === undefined) return undefined;
  return Array.isArray(value) ? value.map((row: unknown[]) => row.map(toCell)) : toCell(value);
};

/** Excel's error code for the error value that the cell shows. Only #VALUE! and #N/A can have a message. */
const errorCode = (runtime: ExcelRuntime, code: string): CustomFunctions.ErrorCode => {
  const { ErrorCode } = runtime;
  switch (code) {
    case "#N/A":
      return ErrorCode.notAvailable;
    case "#DIV/0!":
      return ErrorCode.divisionByZero;
    case "#NUM!":
      return ErrorCode.invalidNumber;
    case "#NULL!":
      return ErrorCode.nullReference;
    case "#NAME?":
      return ErrorCode.invalidName;
    case "#REF!":
      return ErrorCode.invalidReference;
    default:
      return ErrorCode.invalidValue;
  }
};

const toExcelError = (runtime: ExcelRuntime, { code, message }: CellError): CustomFunctions.Error =>
  code === "#VALUE!" || code === "#N/A"
    ? new runtime.Error(errorCode(runtime, code), message)
    : new runtime.Error(errorCode(runtime, code));

/** Converts a result to the block that Excel spills, with errors in their cells. Throws a single error, as Excel expects. */
export const toExcelBlock = (runtime: ExcelRuntime, answer: Answer): unknown[][] => {
  if (answer instanceof CellError) throw toExcelError(runtime, answer);
  const block: Matrix = isMatrix(answer) ? answer : [[answer]];
  return block.map((row) =>
    row.map((cell) => (cell instanceof CellError ? toExcelError(runtime, cell) : (cell ?? ""))),
  );
};
