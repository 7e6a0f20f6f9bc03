import type { Cell } from "../../../shared/cell";
import { areaAddress, overlap, addressesIn, type Area, type CellAddress } from "../../workbook/address";
import { occupiedInWords, type Occupied } from "../../workbook/patch";
import type { Survey } from "../../workbook/survey";

const isEmptyCell = (cell: Cell): boolean => cell === null || cell === "";

/** Filled cells of an area: a value, white space, or a formula that shows nothing. */
export const occupiedIn = ({ cells, formulas }: Survey, { from, to }: Area): Occupied[] =>
  addressesIn({ from, to: { ...to, row: Math.min(to.row, cells.length - 1) } })
    .map(({ row, column }): Occupied => {
      const shows = cells[row]?.[column] ?? null;
      return { row, column, holds: isEmptyCell(shows) ? (formulas[row]?.[column] ?? "") : shows };
    })
    .filter(({ holds }) => !isEmptyCell(holds));

/** Why an area can't be written; undefined if it can. */
export const obstacleIn = (survey: Survey, area: Area): string | undefined => {
  if (area.to.column > survey.end.column || area.to.row > survey.end.row)
    return `${areaAddress(area)} goes past the sheet's end`;
  const merged = survey.merged.find((each) => overlap(each, area));
  if (merged) return `${areaAddress(merged)} is merged`;
  const occupied = occupiedIn(survey, area);
  return occupied.length > 0 ? occupiedInWords(occupied) : undefined;
};

const moved = ({ from, to }: Area, right: number): Area => ({
  from: { row: from.row, column: from.column + right },
  to: { row: to.row, column: to.column + right },
});

/** The next address to the right where an area of this size is free; undefined if the sheet ends first. */
export const nextFreeAddress = (survey: Survey, area: Area): CellAddress | undefined => {
  for (let right = 0; area.to.column + right <= survey.end.column; right++) {
    const there = moved(area, right);
    if (obstacleIn(survey, there) === undefined) return there.from;
  }
  return undefined;
};
