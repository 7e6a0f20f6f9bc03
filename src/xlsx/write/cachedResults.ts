import { CellError, type Cell } from "../../../shared/cell";
import { a1 } from "../../workbook/address";
import type { Book } from "../book/book";

/** Programs differ in the last digits. */
const RELATIVE = 1e-9;

const agrees = (a: Cell, b: Cell): boolean => {
  // Programs also differ in the error that they give.
  if (a instanceof CellError || b instanceof CellError)
    return a instanceof CellError && b instanceof CellError;
  if (typeof a === "number" && typeof b === "number")
    return Math.abs(a - b) <= RELATIVE * Math.max(Math.abs(a), Math.abs(b), 1);
  return (a ?? "") === (b ?? "");
};

/** Whether a formula was never calculated, or by a program that didn't know its functions. */
export const lacksCachedResult = (inFile: Cell): boolean =>
  inFile === null || (inFile instanceof CellError && inFile.code === "#NAME?");

/** Cells whose formula gives another result here than the file's cached one, such as `D4 on "Bid"`. Missing results don't count. */
export const differingResults = (inFile: Book, calculated: Book): string[] =>
  inFile.sheets.flatMap((sheet, index) =>
    [...sheet.cells].flatMap(([row, cells]) =>
      [...cells].flatMap(([column, { formula, value }]) => {
        if (formula === undefined || lacksCachedResult(value)) return [];
        const here = calculated.sheets[index]?.cells.get(row)?.get(column)?.value ?? null;
        return agrees(value, here) ? [] : [`${a1({ row, column })} on "${sheet.name}"`];
      }),
    ),
  );
