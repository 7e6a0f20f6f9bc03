import { a1Range, sheetPrefix } from "../../workbook/address";
import { isEmpty } from "../../workbook/formula";
import { formula, type PlannedCell } from "../../workbook/plan";
import { listItemsWhere, warningAbout } from "../itemWarnings";
import { checkCells } from "../takeoff/takeoffChecks";
import type { TakeoffLayout } from "../takeoff/takeoffLayout";
import { absoluteTrimColumn } from "../takeoff/trimTable";
import { FIRST_ORDER_ROW, ORDER, type OrderColumn } from "./orderLayout";

/** One column of all the order's lines and groups. */
const wholeColumn = (lastRow: number, column: OrderColumn): string =>
  a1Range({ row: FIRST_ORDER_ROW, column: ORDER[column] }, { row: lastRow, column: ORDER[column] });

/** As a formula, 1 for each row of a column with a number that meets a condition such as `>0`, otherwise 0. */
const isNumberThat = (column: string, condition: string): string =>
  `IF(ISNUMBER(${column}),IF(${column}${condition},1,0),0)`;

/** The ordered items without a weight or a price. */
export const itemsWithout = (lastRow: number, column: "weight" | "extended"): string => {
  const [items, ordered, figures] = (["item", "toOrder", column] as const).map((each) =>
    wholeColumn(lastRow, each),
  ) as [string, string, string];
  const isMissing = `IF(ISERROR(${figures}),0,IF(${isEmpty(figures)},1,0))`;
  return listItemsWhere(items, `${isNumberThat(ordered, ">0")}*${isMissing}>0`);
};

/** Warnings about lines, each as a formula without "=" that lists the items or is blank. */
const lineWarnings = (lastRow: number): string[] => {
  const column = (of: OrderColumn): string => wholeColumn(lastRow, of);
  const isError = (of: OrderColumn): string => `IF(ISERROR(${column(of)}),1,0)`;
  // Subtotals have no unit.
  const isLine = `IF(LEN(${column("unit")})=0,0,1)`;
  const ofItems = (sentence: string, condition: string): string =>
    warningAbout(sentence, listItemsWhere(column("item"), `${condition}>0`));
  const noNumber = (what: string, of: OrderColumn): string =>
    ofItems(`${what} isn't a number`, `${isLine}*(1-${isError("toOrder")})*${isError(of)}`);
  return [
    ofItems("what to order is an error", isError("toOrder")),
    ofItems("what to order is negative", isNumberThat(column("toOrder"), "<0")),
    ofItems("the weight is negative", isNumberThat(column("weightEach"), "<0")),
    ofItems("the price is negative", isNumberThat(column("price"), "<0")),
    noNumber("the weight", "weight"),
    noNumber("the price", "extended"),
  ];
};

/** Trims that the takeoff needs but the order doesn't list, for instance after its line was deleted. */
const missingTrims = (layout: TakeoffLayout, takeoffSheet: string, lastRow: number): string => {
  const [labels, stocks] = (["label", "stocks"] as const).map(
    (column) => `${sheetPrefix(takeoffSheet)}${absoluteTrimColumn(layout, column)}`,
  ) as [string, string];
  const isMissing = `ISNA(MATCH(${labels},${wholeColumn(lastRow, "item")},0))`;
  return warningAbout(
    "needed, and not on this order",
    listItemsWhere(labels, `${isNumberThat(stocks, ">0")}*${isMissing}>0`),
  );
};

/** The order's warnings and the takeoff's: the buyer may never have seen the takeoff. */
export const warningCell = (layout: TakeoffLayout, takeoffSheet: string, lastRow: number): PlannedCell => {
  const checks = checkCells(layout).map((cell) => `${sheetPrefix(takeoffSheet)}${cell}`);
  return {
    row: FIRST_ORDER_ROW - 2,
    column: ORDER.item,
    content: formula(
      `=TEXTJOIN("; ",TRUE,${[...lineWarnings(lastRow), missingTrims(layout, takeoffSheet, lastRow), ...checks].join(",")})`,
    ),
    style: "caution",
  };
};
