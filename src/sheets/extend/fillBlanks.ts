import { isBlank } from "../../../shared/cell";
import { NAMESPACE } from "../../workbook/namespace";
import { shiftFormula } from "../../workbook/formulas/shiftFormula";
import type { CellPatch } from "../../workbook/patch";
import { formula } from "../../workbook/plan";
import type { Block } from "./block";
import type { Survey } from "../../workbook/survey";

const CALL = new RegExp(`\\b${NAMESPACE}\\.`, "i");

const formulaIn = ({ formulas }: Survey, row: number, column: number): string =>
  formulas[row]?.[column] ?? "";

const isFree = (survey: Survey, row: number, column: number): boolean =>
  isBlank(survey.cells[row]?.[column]) && formulaIn(survey, row, column) === "";

/** A result column's formula as it would be in the block's first row; undefined if its rows differ, or call none of our functions. */
const resultOf = (survey: Survey, { firstRow, lastRow }: Block, column: number): string | undefined => {
  let found: string | undefined;
  for (let row = firstRow; row <= lastRow; row++) {
    if (isFree(survey, row, column)) continue;
    const there = formulaIn(survey, row, column);
    if (!CALL.test(there)) return undefined;
    const asInFirst = shiftFormula(there, firstRow - row, 0);
    if (found !== undefined && found !== asInFirst) return undefined;
    found = asInFirst;
  }
  return found;
};

/**
 * Fills blank results in a block with the formulas of the other rows, as after a row was inserted. If there are several
 * separate gaps, the first; undefined if there is none.
 */
export const fillBlanksPlan = (survey: Survey, block: Block): CellPatch | undefined => {
  const results = new Map<number, string>();
  for (let column = block.firstColumn; column <= block.lastColumn; column++) {
    const result = resultOf(survey, block, column);
    if (result !== undefined) results.set(column, result);
  }
  /** The first run of adjacent blank results in a row. */
  const freeIn = (row: number): number[] =>
    [...results.keys()]
      .filter((column) => isFree(survey, row, column))
      .filter((column, index, [first = 0]) => column - first === index);
  const rows = Array.from(
    { length: block.lastRow - block.firstRow + 1 },
    (_, index) => block.firstRow + index,
  );
  const first = rows.find((row) => freeIn(row).length > 0);
  if (first === undefined) return undefined;
  const columns = freeIn(first);
  const end = rows.find((row) => row > first && String(freeIn(row)) !== String(columns)) ?? block.lastRow + 1;
  /** Formats come from the row above, which has all its results; without one, from the first row below that has these results. */
  const like =
    first > block.firstRow
      ? first - 1
      : rows.find((row) => row >= end && columns.every((column) => !isFree(survey, row, column)));
  return {
    sheet: block.sheet,
    ...(like !== undefined && { copyFormatsFrom: { row: like } }),
    at: { row: first, column: columns[0] ?? 0 },
    cells: rows
      .filter((row) => row >= first && row < end)
      .map((row) =>
        columns.map((column) => ({
          content: formula(shiftFormula(results.get(column) ?? "", row - block.firstRow, 0)),
        })),
      ),
  };
};
