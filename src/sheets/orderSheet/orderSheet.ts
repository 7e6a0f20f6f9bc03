import { packsSpec } from "../../../functions/orders/packs";
import { a1, a1Range, sheetPrefix } from "../../workbook/address";
import { cautionCells } from "../cautionCells";
import { call, isEmpty, unlessEmpty } from "../../workbook/formula";
import { panelFieldName } from "../panelSheet";
import {
  formula,
  number,
  text,
  type CellContent,
  type PlannedCell,
  type SheetPlan,
} from "../../workbook/plan";
import { warningAbout, listItemsWhere } from "../itemWarnings";
import { rowHeightsOf } from "../../workbook/rowHeights";
import type { TakeoffLayout } from "../takeoff/takeoffLayout";
import type { SupplyInput, TakeoffOptions } from "../takeoff/takeoffOptions";
import { checkCells } from "../takeoff/takeoffChecks";
import { absoluteTrimColumn } from "../takeoff/trimTable";
import { planeTotalCell } from "../takeoff/planeSection";
import { FIRST_ORDER_ROW, ORDER, ORDER_HEADINGS, orderCell, type OrderColumn } from "./orderLayout";
import { orderGroups, PANELS, type OrderGroup, type OrderLine, type WithWaste } from "./orderLines";

const MONEY = "#,##0.00";
/** A line of which nothing is needed stays in its place, and is quiet. */
const COUNT = '#,##0;-#,##0;"–"';
const FORMATS: Partial<Record<OrderColumn, string>> = {
  needed: COUNT,
  waste: "0%",
  withWaste: COUNT,
  perPack: "#,##0",
  toOrder: COUNT,
  weightEach: "0.000",
  weight: COUNT,
  price: MONEY,
  extended: '#,##0.00;-#,##0.00;"–"',
};

const cellOf = (
  row: number,
  column: OrderColumn,
  content: CellContent | null,
  style: NonNullable<PlannedCell["style"]>,
): PlannedCell => {
  const numberFormat = FORMATS[column];
  return { row, column: ORDER[column], content, style, ...(numberFormat && { numberFormat }) };
};

/** The supplier's figure where there is one, else what is worked out, else a shaded cell for it. */
const figure = (
  row: number,
  column: OrderColumn,
  worked: string | number | undefined,
  typed: number | undefined,
): PlannedCell => {
  if (typed === undefined && typeof worked === "string")
    return cellOf(row, column, formula(`=IF(${isEmpty(worked)},"",${worked})`), "result");
  const shown = typed ?? worked;
  return cellOf(row, column, typeof shown === "number" ? number(shown) : null, "input");
};

const lineCells = (
  line: OrderLine,
  row: number,
  withWaste: WithWaste,
  { spare, supplies }: TakeoffOptions,
): PlannedCell[] => {
  const supply: SupplyInput = supplies[line.item] ?? {};
  const at = (column: OrderColumn): string => orderCell(row, column);
  const worked = (column: OrderColumn, content: string): PlannedCell =>
    cellOf(row, column, formula(content), column === "toOrder" ? "total" : "result");
  const ifBoth = (one: string, other: string, then: string): string =>
    `=IF(OR(${isEmpty(one)},${isEmpty(other)}),"",${then})`;
  /** Units of a row of trim are quiet where it isn't filled; a pack of one is a piece. */
  const unit = line.shownItem ? formula(unlessEmpty(at("item"), `"${line.unit}"`)) : text(line.unit);
  const packed = `IF(${at("perPack")}=1,"${line.unit}","${line.orderUnit}")`;
  const orderUnit = line.shownItem ? formula(unlessEmpty(at("item"), packed)) : text(line.orderUnit);
  return [
    cellOf(row, "item", line.shownItem ? formula(`=${line.shownItem}`) : text(line.item), "label"),
    cellOf(row, "unit", unit, "centered"),
    worked("needed", `=${line.needed(withWaste)}`),
    cellOf(row, "waste", number(line.item === PANELS ? spare : 0), "input"),
    worked("withWaste", unlessEmpty(at("needed"), call(packsSpec, at("needed"), "1", at("waste")))),
    figure(row, "perPack", line.perPack, supply.perPack),
    worked("toOrder", unlessEmpty(at("withWaste"), call(packsSpec, at("withWaste"), at("perPack")))),
    cellOf(row, "orderUnit", orderUnit, "label"),
    figure(row, "weightEach", line.weightEach, supply.weightLb),
    worked(
      "weight",
      ifBoth(at("toOrder"), at("weightEach"), `${at("toOrder")}*${at("perPack")}*${at("weightEach")}`),
    ),
    figure(row, "price", line.price, supply.price),
    worked("extended", ifBoth(at("toOrder"), at("price"), `ROUND(${at("toOrder")}*${at("price")},2)`)),
  ];
};

interface PlacedGroup extends OrderGroup {
  readonly row: number;
}

/** A group takes a row for its title and subtotals, and one for each line. */
const place = (groups: readonly OrderGroup[]): readonly PlacedGroup[] => {
  let next = FIRST_ORDER_ROW;
  return groups.map((group) => {
    const row = next;
    next += group.lines.length + 1;
    return { ...group, row };
  });
};

const rowOfItem = (groups: readonly PlacedGroup[], item: string): number => {
  const [row] = groups.flatMap((group) =>
    group.lines.flatMap((line, index) => (line.item === item ? [group.row + 1 + index] : [])),
  );
  if (row === undefined) throw new Error(`The order has no line of ${item}.`);
  return row;
};

const groupCells = ({ title, row, lines }: PlacedGroup): PlannedCell[] =>
  (Object.keys(ORDER) as OrderColumn[]).map((column) => {
    const subtotal = `=SUM(${a1Range({ row: row + 1, column: ORDER[column] }, { row: row + lines.length, column: ORDER[column] })})`;
    const content =
      column === "item"
        ? text(title)
        : column === "weight" || column === "extended"
          ? formula(subtotal)
          : null;
    return cellOf(row, column, content, "total");
  });

/** Rows of the order that hold a line or a group, as a range of one column. */
const wholeColumn = (lastRow: number, column: OrderColumn): string =>
  a1Range({ row: FIRST_ORDER_ROW, column: ORDER[column] }, { row: lastRow, column: ORDER[column] });

/** For each row 1 where a cell of a column holds a number to which something applies. */
const isNumberThat = (column: string, applies: string): string =>
  `IF(ISNUMBER(${column}),IF(${column}${applies},1,0),0)`;

/** So many letters of names find room before the totals' labels. */
const NAMES_SHOWN = 50;

/** The items that are ordered and whose figure is missing. */
const missing = (lastRow: number, column: "weight" | "extended"): string => {
  const [items, ordered, figures] = (["item", "toOrder", column] as const).map((each) =>
    wholeColumn(lastRow, each),
  ) as [string, string, string];
  const isMissing = `IF(ISERROR(${figures}),0,IF(${isEmpty(figures)},1,0))`;
  return listItemsWhere(items, `${isNumberThat(ordered, ">0")}*${isMissing}>0`);
};

/** What is wrong with lines, each as a formula without "=" that names the items, or comes to nothing. */
const lineWarnings = (lastRow: number): string[] => {
  const column = (of: OrderColumn): string => wholeColumn(lastRow, of);
  const isError = (of: OrderColumn): string => `IF(ISERROR(${column(of)}),1,0)`;
  // The subtotals of groups have no unit.
  const isLine = `IF(LEN(${column("unit")})=0,0,1)`;
  const ofItems = (sentence: string, condition: string): string =>
    warningAbout(sentence, listItemsWhere(column("item"), `${condition}>0`));
  const noNumber = (what: string, of: OrderColumn): string =>
    ofItems(`${what} is no number`, `${isLine}*(1-${isError("toOrder")})*${isError(of)}`);
  return [
    ofItems("what to order is an error", isError("toOrder")),
    ofItems("what to order is negative", isNumberThat(column("toOrder"), "<0")),
    ofItems("the weight is negative", isNumberThat(column("weightEach"), "<0")),
    ofItems("the price is negative", isNumberThat(column("price"), "<0")),
    noNumber("the weight", "weight"),
    noNumber("the price", "extended"),
  ];
};

/** Trims that the takeoff needs and no line of the order bears, as where one was deleted. */
const trimsLeftOut = (layout: TakeoffLayout, takeoffSheet: string, lastRow: number): string => {
  const [labels, stocks] = (["label", "stocks"] as const).map(
    (column) => `${sheetPrefix(takeoffSheet)}${absoluteTrimColumn(layout, column)}`,
  ) as [string, string];
  const isLeftOut = `ISNA(MATCH(${labels},${wholeColumn(lastRow, "item")},0))`;
  return warningAbout(
    "needed, and not on this order",
    listItemsWhere(labels, `${isNumberThat(stocks, ">0")}*${isLeftOut}>0`),
  );
};

/** What is wrong with the order, and what the takeoff warns of: who orders may never have seen the takeoff. */
const warnings = (layout: TakeoffLayout, takeoffSheet: string, lastRow: number): PlannedCell => {
  const checks = checkCells(layout).map((cell) => `${sheetPrefix(takeoffSheet)}${cell}`);
  return {
    row: FIRST_ORDER_ROW - 2,
    column: ORDER.item,
    content: formula(
      `=TEXTJOIN("; ",TRUE,${[...lineWarnings(lastRow), trimsLeftOut(layout, takeoffSheet, lastRow), ...checks].join(",")})`,
    ),
    style: "caution",
  };
};

interface Summary {
  readonly label: string;
  readonly content: string;
  readonly numberFormat: string;
  readonly note: CellContent;
}

const summaries = (
  layout: TakeoffLayout,
  takeoffSheet: string,
  groups: readonly PlacedGroup[],
  lastRow: number,
  firstSummaryRow: number,
): readonly Summary[] => {
  const overGroups = (column: "weight" | "extended"): string =>
    groups.map(({ row }) => orderCell(row, column)).join("+");
  const area = `${sheetPrefix(takeoffSheet)}${planeTotalCell(layout, "area")}`;
  const packsOfPanels = orderCell(FIRST_ORDER_ROW + 1, "toOrder");
  const perPallet = panelFieldName("packsPerPallet");
  const weightRow = firstSummaryRow + 1;
  const weight = a1({ row: weightRow, column: ORDER.extended });
  const without = (column: "weight" | "extended", what: string, row: number): CellContent => {
    const items = missing(lastRow, column);
    const named = `IF(LEN(${items})>${NAMES_SHOWN},LEFT(${items},${NAMES_SHOWN})&"...",${items})`;
    const counted = `IF(LEN(${items})=0,"every line that is ordered has a ${what}","ordered without a ${what}, and not in the total: "&${named})`;
    return formula(
      `=IF(ISERROR(${a1({ row, column: ORDER.extended })}),"a line is an error, and so is the total",${counted})`,
    );
  };
  return [
    {
      label: "Total, before tax",
      content: `=${overGroups("extended")}`,
      numberFormat: MONEY,
      note: without("extended", "price", firstSummaryRow),
    },
    {
      label: "Weight of all (lb)",
      content: `=${overGroups("weight")}`,
      numberFormat: "#,##0",
      note: without("weight", "weight", weightRow),
    },
    {
      label: "Weight on the deck (lb per sq ft)",
      content: `=IF(${area}=0,"",${weight}/${area})`,
      numberFormat: "0.00",
      note: text("spread evenly, not stacked; whether the deck carries it is for a licensed professional"),
    },
    {
      label: "Pallets of panels",
      content: `=IF(OR(${perPallet}=0,${isEmpty(packsOfPanels)}),"",${call(packsSpec, packsOfPanels, perPallet)})`,
      numberFormat: "#,##0",
      note: formula(`=IF(${perPallet}=0,"the panel sheet doesn't say how many packs a pallet holds","")`),
    },
  ];
};

const SUMMARY_LABEL: OrderColumn = "weightEach";

const summaryCells = (row: number, { label, content, numberFormat, note }: Summary): PlannedCell[] => [
  { row, column: ORDER[SUMMARY_LABEL], content: text(label), style: "label" },
  { row, column: ORDER.extended, content: formula(content), style: "total", numberFormat },
  { row, column: ORDER.item, content: note, style: "note" },
];

/** What to buy, in whole packs, with its weight and its price. */
export const orderSheet = (
  sheetName: string,
  takeoffSheet: string,
  layout: TakeoffLayout,
  options: TakeoffOptions,
): SheetPlan => {
  const groups = place(orderGroups(layout, takeoffSheet));
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
    warnings(layout, takeoffSheet, lastRow),
    ...ORDER_HEADINGS.map((heading, column): PlannedCell => ({
      row: FIRST_ORDER_ROW - 1,
      column,
      content: text(heading),
      style: "heading",
    })),
    ...groups.flatMap((group) => [
      ...groupCells(group),
      ...group.lines.flatMap((line, index) => lineCells(line, group.row + 1 + index, withWaste, options)),
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
