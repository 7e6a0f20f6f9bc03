import { isBlank } from "../../../shared/cell";
import type { Area } from "../../workbook/address";
import type { Survey } from "../../workbook/survey";

const isFilled = ({ cells }: Survey, row: number, column: number): boolean => !isBlank(cells[row]?.[column]);

const widthOf = ({ cells }: Survey): number => cells.reduce((widest, row) => Math.max(widest, row.length), 0);

const someIn = (survey: Survey, { from, to }: Area): boolean => {
  for (let row = from.row; row <= to.row; row++)
    for (let column = from.column; column <= to.column; column++)
      if (isFilled(survey, row, column)) return true;
  return false;
};

const rowOf = ({ from, to }: Area, row: number): Area => ({
  from: { row, column: from.column },
  to: { row, column: to.column },
});
const columnOf = ({ from, to }: Area, column: number): Area => ({
  from: { row: from.row, column },
  to: { row: to.row, column },
});

/** Grows from one cell to the blank rows and columns around it, as a spreadsheet's Select Current Region does. */
const grown = (survey: Survey, start: Area): Area => {
  let { from, to } = start;
  for (;;) {
    const wide: Area = {
      from: { row: from.row, column: Math.max(0, from.column - 1) },
      to: { row: to.row, column: to.column + 1 },
    };
    const high: Area = {
      from: { row: Math.max(0, from.row - 1), column: from.column },
      to: { row: to.row + 1, column: to.column },
    };
    if (from.row > 0 && someIn(survey, rowOf(wide, from.row - 1))) from = { ...from, row: from.row - 1 };
    else if (someIn(survey, rowOf(wide, to.row + 1))) to = { ...to, row: to.row + 1 };
    else if (from.column > 0 && someIn(survey, columnOf(high, from.column - 1)))
      from = { ...from, column: from.column - 1 };
    else if (someIn(survey, columnOf(high, to.column + 1))) to = { ...to, column: to.column + 1 };
    else return { from, to };
  }
};

/** A selection without blank rows and columns at its edges. A whole column ends at the used range. */
const trimmed = (survey: Survey, { from, to }: Area): Area | undefined => {
  let area: Area = {
    from,
    to: {
      row: Math.min(to.row, survey.cells.length - 1),
      column: Math.min(to.column, widthOf(survey) - 1),
    },
  };
  const isEmptyArea = (): boolean => area.to.row < area.from.row || area.to.column < area.from.column;
  while (!isEmptyArea() && !someIn(survey, rowOf(area, area.to.row)))
    area = { ...area, to: { ...area.to, row: area.to.row - 1 } };
  while (!isEmptyArea() && !someIn(survey, rowOf(area, area.from.row)))
    area = { ...area, from: { ...area.from, row: area.from.row + 1 } };
  while (!isEmptyArea() && !someIn(survey, columnOf(area, area.to.column)))
    area = { ...area, to: { ...area.to, column: area.to.column - 1 } };
  while (!isEmptyArea() && !someIn(survey, columnOf(area, area.from.column)))
    area = { ...area, from: { ...area.from, column: area.from.column + 1 } };
  return isEmptyArea() ? undefined : area;
};

/** The selected rows; or, if only one row is selected, the current region around its first cell. */
export const currentRegion = (survey: Survey): Area | undefined => {
  const { selected } = survey;
  if (selected.to.row > selected.from.row) return trimmed(survey, selected);
  const region = grown(survey, { from: selected.from, to: selected.from });
  return trimmed(survey, region);
};
