import { sealSpec } from "../../functions/money/seal";
import { CellError, type Cell } from "../../shared/cell";
import { sealOf } from "../../shared/seal";
import { absoluteA1, sheetPrefix, type Area, type CellAddress } from "../workbook/address";
import { valueAt, type SheetContents } from "../workbook/contents";
import { call, quotedText } from "../workbook/formula";

/** A block of cells and its seal at an earlier time. */
export interface SealedBlock {
  readonly sheet: string;
  readonly area: Area;
  readonly seal: number;
}

const cellsIn = ({ from, to }: Area, cellAt: (place: CellAddress) => Cell): Cell[][] =>
  Array.from({ length: to.row - from.row + 1 }, (_, row) =>
    Array.from({ length: to.column - from.column + 1 }, (_each, column) =>
      cellAt({ row: from.row + row, column: from.column + column }),
    ),
  );

/** The current seal of a block, calculated here and never read from a cell; undefined where a cell is an error. */
export const currentSeal = (sheet: SheetContents, area: Area): number | undefined => {
  const cells = cellsIn(area, (place) => valueAt(sheet, place));
  return cells.flat().some((cell) => cell instanceof CellError) ? undefined : sealOf(cells);
};

/** The seal of a block as a formula of any sheet. */
export const sealFormula = ({ sheet, area }: Omit<SealedBlock, "seal">): string =>
  call(sealSpec, `${sheetPrefix(sheet)}${absoluteA1(area.from)}:${absoluteA1(area.to)}`);

/**
 * As a formula: blank where two cells hold the same seal, otherwise a warning that the sheet was edited. Where our functions or the
 * sheet are missing, it says so.
 */
export const editedWarningFormula = (then: string, now: string, sheet: string, since: string): string =>
  `IFERROR(IF(${then}=${now},"",${quotedText(`"${sheet}" was edited since ${since}`)}),${quotedText(`the seal of "${sheet}" can't be worked out here`)})`;

/** A sheet that is blank outside a block: only sealed cells are read. */
export const onlyWithin = ({ cells, formulas }: SheetContents, { from, to }: Area): SheetContents => {
  const isIn = (row: number, column: number): boolean =>
    row >= from.row && row <= to.row && column >= from.column && column <= to.column;
  return {
    cells: cells.map((line, row) => line.map((cell, column) => (isIn(row, column) ? cell : null))),
    formulas: formulas.map((line, row) => line.map((cell, column) => (isIn(row, column) ? cell : ""))),
  };
};
