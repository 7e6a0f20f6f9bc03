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

/** The place of a cell in the engine's own words; row and column count from 0. */
export interface EngineCellAddress {
  readonly unitId: string;
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
}

const keyOf = ({ unitId, sheetId, row, column }: EngineCellAddress): string =>
  `${unitId}\n${sheetId}\n${row}\n${column}`;

const said = (value: Nullable<BaseValueObject>): RecordedError | undefined =>
  value instanceof ErrorValueObject && value.getErrorContent() !== ""
    ? { code: value.getErrorType(), message: value.getErrorContent() }
    : undefined;

/** Which sentence belongs to the error in which cell. The engine's cells hold the code alone. */
export class ErrorMessages {
  private readonly byCell = new Map<string, RecordedError>();
  private readonly cellsByFormula = new Map<string, string[]>();

  /** Takes the result of the formula in a cell, and forgets what an earlier result of the same formula said. */
  record(place: EngineCellAddress, result: FunctionVariantType): void {
    const formula = keyOf(place);
    for (const cell of this.cellsByFormula.get(formula) ?? []) this.byCell.delete(cell);
    this.cellsByFormula.delete(formula);

    const cells: string[] = [];
    const note = (value: Nullable<BaseValueObject>, rowOffset: number, columnOffset: number): void => {
      const what = said(value);
      if (what === undefined) return;
      const cell = keyOf({ ...place, row: place.row + rowOffset, column: place.column + columnOffset });
      this.byCell.set(cell, what);
      cells.push(cell);
    };
    if (result.isReferenceObject()) return;
    if (result.isArray()) {
      (result as ArrayValueObject).getArrayValue().forEach((row, r) => {
        row.forEach((value, c) => note(value, r, c));
      });
    } else {
      note(result as BaseValueObject, 0, 0);
    }
    if (cells.length > 0) this.cellsByFormula.set(formula, cells);
  }

  /**
   * The sentence for what a cell shows now. A cell may have been overwritten since its formula ran,
   * or its spill may be blocked: then the code differs and there is nothing to say.
   */
  at(place: EngineCellAddress, shown: unknown): string {
    const what = this.byCell.get(keyOf(place));
    return what !== undefined && what.code === shown ? what.message : "";
  }
}
