import { text, type PlannedCell, type SheetPlan } from "../../workbook/plan";
import { rowHeightsOf } from "../../workbook/rowHeights";
import { cautionCells } from "../cautionCells";
import type { TakeoffLayout } from "../takeoff/takeoffLayout";
import type { TakeoffOptions } from "../takeoff/takeoffOptions";
import { FIRST_ORDER_ROW, ORDER_HEADINGS, orderCell } from "./orderLayout";
import { orderGroups, type WithWaste } from "./orderLines";
import { groupCells, orderLineCells, placeGroups, rowOfItem } from "./orderRows";
import { summaries, summaryCells } from "./orderSummary";
import { warningCell } from "./orderWarnings";

/** What to buy, in whole packs, with its weight and its price. */
export const orderSheet = (
  sheetName: string,
  takeoffSheet: string,
  layout: TakeoffLayout,
  options: TakeoffOptions,
): SheetPlan => {
  const groups = placeGroups(orderGroups(layout, takeoffSheet));
  const withWaste: WithWaste = (item) => orderCell(rowOfItem(groups, item), "withWaste");
  const last = groups[groups.length - 1];
  const lastRow = last ? last.row + last.lines.length : FIRST_ORDER_ROW;
  const firstSummaryRow = lastRow + 2;
  const totals = summaries(layout, takeoffSheet, groups, lastRow, firstSummaryRow);
  const cells: PlannedCell[] = [
    {
      row: 0,
      column: 0,
      content: text(options.job === "" ? "Order" : `Order: ${options.job}`),
      style: "title",
    },
    {
      row: 1,
      column: 0,
      content: text(
        "Every quantity leads back to the takeoff. Type in the shaded cells; packs, weights and prices of panels and trims are typed on their own sheets.",
      ),
      style: "note",
    },
    warningCell(layout, takeoffSheet, lastRow),
    ...ORDER_HEADINGS.map((heading, column): PlannedCell => ({
      row: FIRST_ORDER_ROW - 1,
      column,
      content: text(heading),
      style: "heading",
    })),
    ...groups.flatMap((group) => [
      ...groupCells(group),
      ...group.lines.flatMap((line, index) =>
        orderLineCells(line, group.row + 1 + index, withWaste, options),
      ),
    ]),
    ...totals.flatMap((summary, index) => summaryCells(firstSummaryRow + index, summary)),
    ...cautionCells(firstSummaryRow + totals.length + 1),
  ];
  return {
    name: sheetName,
    frozenRows: FIRST_ORDER_ROW,
    columnWidths: [150, 70, 70, 60, 80, 70, 70, 70, 80, 84, 90, 100],
    rowHeights: rowHeightsOf(cells),
    print: "one page, landscape",
    cells,
  };
};
