import { packsSpec } from "../../../functions/orders/packs";
import { a1, a1Range, sheetPrefix } from "../address";
import { cautionCells } from "../cautionCells";
import { call, isEmpty, unlessEmpty } from "../formula";
import { panelFieldName } from "../panelSheet";
import { formula, number, text, type Content, type PlannedCell, type SheetPlan } from "../plan";
import { rowHeightsOf } from "../rowHeights";
import type { TakeOffLayout } from "../takeOff/layout";
import type { SupplyInput, TakeOffOptions } from "../takeOff/options";
import { checkCells } from "../takeOff/checks";
import { planeTotalCell } from "../takeOff/planes";
import { FIRST_ORDER_ROW, ORDER, ORDER_HEADINGS, orderCell, type OrderColumn } from "./layout";
import { orderGroups, PANELS, type OrderGroup, type OrderLine, type WithWaste } from "./lines";

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
  content: Content | null,
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
  { spare, supplies }: TakeOffOptions,
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
    cellOf(row, "unit", unit, "centred"),
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

/** Lines that are ordered and whose figure is missing. */
const missing = (lastRow: number, column: "weight" | "extended"): string => {
  const ordered = wholeColumn(lastRow, "toOrder");
  return `SUMPRODUCT(IF(ISNUMBER(${ordered}),IF(${ordered}>0,1,0),0)*IF(ISERROR(${wholeColumn(lastRow, column)}),0,IF(${isEmpty(wholeColumn(lastRow, column))},1,0)))`;
};

/** Lines whose order is an error: they are in no total. */
const lineErrors = (lastRow: number): string => `SUMPRODUCT(ISERROR(${wholeColumn(lastRow, "toOrder")})*1)`;

/** What is wrong with a line, each as a formula without "=" that names the item, or comes to nothing. */
const lineWarnings = (row: number): string[] => {
  const item = orderCell(row, "item");
  const ifNegative = (column: OrderColumn, what: string): string => {
    const cell = orderCell(row, column);
    return `IF(ISNUMBER(${cell}),IF(${cell}<0,${item}&": ${what} is negative",""),"")`;
  };
  return [
    `IF(ISERROR(${orderCell(row, "toOrder")}),${item}&": what to order is an error","")`,
    ifNegative("weightEach", "the weight"),
    ifNegative("price", "the price"),
  ];
};

/** What is wrong with the order, and what the take-off warns of: who orders may never have seen the take-off. */
const warnings = (
  layout: TakeOffLayout,
  takeOffSheet: string,
  groups: readonly PlacedGroup[],
): PlannedCell => {
  const ofLines = groups.flatMap((group) =>
    group.lines.flatMap((_, index) => lineWarnings(group.row + 1 + index)),
  );
  const checks = checkCells(layout).map((cell) => `${sheetPrefix(takeOffSheet)}${cell}`);
  return {
    row: FIRST_ORDER_ROW - 2,
    column: ORDER.item,
    content: formula(`=TEXTJOIN("; ",TRUE,${[...ofLines, ...checks].join(",")})`),
    style: "caution",
  };
};

interface Summary {
  readonly label: string;
  readonly content: string;
  readonly numberFormat: string;
  readonly note: Content;
}

const summaries = (
  layout: TakeOffLayout,
  takeOffSheet: string,
  groups: readonly PlacedGroup[],
  lastRow: number,
  firstSummaryRow: number,
): readonly Summary[] => {
  const overGroups = (column: "weight" | "extended"): string =>
    groups.map(({ row }) => orderCell(row, column)).join("+");
  const area = `${sheetPrefix(takeOffSheet)}${planeTotalCell(layout, "area")}`;
  const packsOfPanels = orderCell(FIRST_ORDER_ROW + 1, "toOrder");
  const perPallet = panelFieldName("packsPerPallet");
  const weight = a1({ row: firstSummaryRow + 1, column: ORDER.extended });
  const without = (column: "weight" | "extended", what: string): Content =>
    formula(
      `=IF(${lineErrors(lastRow)}>0,"lines with an error are not counted",IF(${missing(lastRow, column)}=0,"every line that is ordered has a ${what}",${missing(lastRow, column)}&" lines that are ordered have no ${what}, and are not in the total"))`,
    );
  return [
    {
      label: "Total, before tax",
      content: `=${overGroups("extended")}`,
      numberFormat: MONEY,
      note: without("extended", "price"),
    },
    {
      label: "Weight of all (lb)",
      content: `=${overGroups("weight")}`,
      numberFormat: "#,##0",
      note: without("weight", "weight"),
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
  takeOffSheet: string,
  layout: TakeOffLayout,
  options: TakeOffOptions,
): SheetPlan => {
  const groups = place(orderGroups(layout, takeOffSheet));
  const withWaste: WithWaste = (item) => orderCell(rowOfItem(groups, item), "withWaste");
  const last = groups[groups.length - 1];
  const lastRow = last ? last.row + last.lines.length : FIRST_ORDER_ROW;
  const firstSummaryRow = lastRow + 2;
  const totals = summaries(layout, takeOffSheet, groups, lastRow, firstSummaryRow);
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
        "Every quantity leads back to the take-off. Type in the shaded cells: waste, what a pack holds, weights and the supplier's prices.",
      ),
      style: "note",
    },
    warnings(layout, takeOffSheet, groups),
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
