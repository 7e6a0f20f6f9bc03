import type { Nullable } from "@univerjs/core";
import {
  ArrayValueObject,
  BooleanValueObject,
  ERROR_TYPE_SET,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
  type BaseValueObject,
} from "@univerjs/engine-formula";
import {
  CellError,
  isMatrix,
  type Answer,
  type Argument,
  type Cell,
  type Matrix,
} from "../../../../shared/cell";

/** The message of an error that a cell shows; empty text if none is known. */
export type ErrorMessageOfCell = (
  unitId: string,
  sheetId: string,
  row: number,
  column: number,
  code: string,
) => string;

const noErrorMessage: ErrorMessageOfCell = () => "";

const toCell = (value: Nullable<BaseValueObject>, messageIfMissing: (code: string) => string): Cell => {
  if (!value || value.isNull()) return null;
  if (value.isError()) {
    const error = value as ErrorValueObject;
    return new CellError(
      error.getErrorType(),
      error.getErrorContent() || messageIfMissing(error.getErrorType()),
    );
  }
  const raw = value.getValue();
  // Lambdas and the like have no plain value.
  if (typeof raw === "number" || typeof raw === "string" || typeof raw === "boolean") return raw;
  return new CellError(ErrorType.VALUE, "this type of value can't be used here");
};

const toMatrix = (array: ArrayValueObject, errorMessageOfCell: ErrorMessageOfCell): Matrix => {
  const columns = Array.from({ length: array.getColumnCount() }, (_, column) => column);
  const values = array.getArrayValue();
  return Array.from({ length: array.getRowCount() }, (_, row) =>
    // The engine's sparse arrays leave out blank rows, so every row is built to full width.
    columns.map((column) =>
      toCell(values[row]?.[column], (code) =>
        errorMessageOfCell(
          array.getUnitId(),
          array.getSheetId(),
          array.getCurrentRow() + row,
          array.getCurrentColumn() + column,
          code,
        ),
      ),
    ),
  );
};

/** An engine value as an argument for a function of the catalog. A reference to one cell arrives as a 1x1 array. */
export const toArgument = (
  value: Nullable<BaseValueObject>,
  errorMessageOfCell: ErrorMessageOfCell = noErrorMessage,
): Argument => {
  if (!value) return undefined;
  if (value.isArray()) {
    const matrix = toMatrix(value as ArrayValueObject, errorMessageOfCell);
    return matrix.length === 1 && matrix[0]?.length === 1 ? matrix[0][0] : matrix;
  }
  // Only an omitted argument arrives as a bare null; a blank cell arrives inside an array.
  return value.isNull() ? undefined : toCell(value, () => "");
};

/** The result of a whole formula; like an argument, but never omitted. */
export const toAnswer = (value: BaseValueObject, errorMessageOfCell?: ErrorMessageOfCell): Answer =>
  toArgument(value, errorMessageOfCell) ?? null;

const isErrorType = (code: string): code is ErrorType => ERROR_TYPE_SET.has(code as ErrorType);

const fromCell = (cell: Cell): BaseValueObject => {
  // The engine shows a blank in a result as 0.
  if (cell === null) return StringValueObject.create("");
  if (cell instanceof CellError) {
    // The engine passes the message along through nested calls, and drops it only when it writes the cell.
    return ErrorValueObject.create(isErrorType(cell.code) ? cell.code : ErrorType.VALUE, cell.message);
  }
  if (typeof cell === "number") return NumberValueObject.create(cell);
  if (typeof cell === "boolean") return BooleanValueObject.create(cell);
  return StringValueObject.create(cell);
};

export const fromAnswer = (answer: Answer): BaseValueObject => {
  if (!isMatrix(answer)) return fromCell(answer);
  return ArrayValueObject.create({
    calculateValueList: answer.map((row) => row.map(fromCell)),
    rowCount: answer.length,
    columnCount: answer[0]?.length ?? 0,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
};
