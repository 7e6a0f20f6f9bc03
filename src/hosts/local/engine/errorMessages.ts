import type { Nullable } from "@univerjs/core";
import {
  ErrorValueObject,
  type ArrayValueObject,
  type BaseValueObject,
  type FunctionVariantType,
} from "@univerjs/engine-formula";

interface RecordedError {
  readonly code: string;
  readonly message: string;
}

/** A cell's address in the engine's terms; row and column count from 0. */
export interface EngineCellAddress {
  readonly unitId: string;
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
}

const keyOf = ({ unitId, sheetId, row, column }: EngineCellAddress): string =>
  `${unitId}\n${sheetId}\n${row}\n${column}`;

const recordedError = (value: Nullable<BaseValueObject>): RecordedError | undefined =>
  value instanceof ErrorValueObject && value.getErrorContent() !== ""
    ? { code: value.getErrorType(), message: value.getErrorContent() }
    : undefined;

/** The messages of errors by cell. The engine's cells hold only the code. */
export class ErrorMessages {
  private readonly byCell = new Map<string, RecordedError>();
  private readonly cellsByFormula = new Map<string, string[]>();

  /** Records the errors in a formula's result, and forgets those of its earlier result. */
  record(place: EngineCellAddress, result: FunctionVariantType): void {
    const formula = keyOf(place);
    for (const cell of this.cellsByFormula.get(formula) ?? []) this.byCell.delete(cell);
    this.cellsByFormula.delete(formula);

    const cells: string[] = [];
    const recordCell = (value: Nullable<BaseValueObject>, rowOffset: number, columnOffset: number): void => {
      const error = recordedError(value);
      if (error === undefined) return;
      const cell = keyOf({ ...place, row: place.row + rowOffset, column: place.column + columnOffset });
      this.byCell.set(cell, error);
      cells.push(cell);
    };
    if (result.isReferenceObject()) return;
    if (result.isArray()) {
      (result as ArrayValueObject).getArrayValue().forEach((row, r) => {
        row.forEach((value, c) => recordCell(value, r, c));
      });
    } else {
      recordCell(result as BaseValueObject, 0, 0);
    }
    if (cells.length > 0) this.cellsByFormula.set(formula, cells);
  }

  /**
   * The message for the error that a cell shows now; empty text if there is none. A cell may have been overwritten since its
   * formula ran, or its spill may be blocked: then the code differs.
   */
  at(place: EngineCellAddress, shown: unknown): string {
    const error = this.byCell.get(keyOf(place));
    return error !== undefined && error.code === shown ? error.message : "";
  }
}
