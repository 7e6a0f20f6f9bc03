import { packsSpec } from "../../../functions/orders/packs";
import { a1Range } from "../../workbook/address";
import { call, isEmpty, unlessEmpty } from "../../workbook/formula";
import { formula, number, text, type CellContent, type PlannedCell } from "../../workbook/plan";
import type { SupplyInput, TakeoffOptions } from "../takeoff/takeoffOptions";
import { FIRST_ORDER_ROW, ORDER, orderCell, type OrderColumn } from "./orderLayout";
import { PANELS, type OrderGroup, type OrderLine, type WithWaste } from "./orderLines";

export const MONEY = "#,##0.00";
/** A line with nothing needed shows dashes. */
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

/** The supplier's figure if typed, otherwise a calculated one, otherwise a shaded cell to type it in. */
const figureCell = (
  row: number,
  column: OrderColumn,
  calculated: string | number | undefined,
  typed: number | undefined,
): PlannedCell => {
  if (typed === undefined && typeof calculated === "string")
    return cellOf(row, column, formula(`=IF(${isEmpty(calculated)},"",${calculated})`), "result");
  const shown = typed ?? calculated;
  return cellOf(row, column, typeof shown === "number" ? number(shown) : null, "input");
};

export const orderLineCells = (
  line: OrderLine,
  row: number,
  withWaste: WithWaste,
  { spare, supplies }: TakeoffOptions,
): PlannedCell[] => {
  const supply: SupplyInput = supplies[line.item] ?? {};
  const at = (column: OrderColumn): string => orderCell(row, column);
  const resultCell = (column: OrderColumn, content: string): PlannedCell =>
    cellOf(row, column, formula(content), column === "toOrder" ? "total" : "result");
  const ifBoth = (one: string, other: string, then: string): string =>
    `=IF(OR(${isEmpty(one)},${isEmpty(other)}),"",${then})`;
  /** A blank row of trim shows no units; a pack of one is a piece. */
  const unit = line.shownItem ? formula(unlessEmpty(at("item"), `"${line.unit}"`)) : text(line.unit);
  const packed = `IF(${at("perPack")}=1,"${line.unit}","${line.orderUnit}")`;
  const orderUnit = line.shownItem ? formula(unlessEmpty(at("item"), packed)) : text(line.orderUnit);
  return [
    cellOf(row, "item", line.shownItem ? formula(`=${line.shownItem}`) : text(line.item), "label"),
    cellOf(row, "unit", unit, "centered"),
    resultCell("needed", `=${line.needed(withWaste)}`),
    cellOf(row, "waste", number(line.item === PANELS ? spare : 0), "input"),
    resultCell("withWaste", unlessEmpty(at("needed"), call(packsSpec, at("needed"), "1", at("waste")))),
    figureCell(row, "perPack", line.perPack, supply.perPack),
    resultCell("toOrder", unlessEmpty(at("withWaste"), call(packsSpec, at("withWaste"), at("perPack")))),
    cellOf(row, "orderUnit", orderUnit, "label"),
    figureCell(row, "weightEach", line.weightEach, supply.weightLb),
    resultCell(
      "weight",
      ifBoth(at("toOrder"), at("weightEach"), `${at("toOrder")}*${at("perPack")}*${at("weightEach")}`),
    ),
    figureCell(row, "price", line.price, supply.price),
    resultCell("extended", ifBoth(at("toOrder"), at("price"), `ROUND(${at("toOrder")}*${at("price")},2)`)),
  ];
};

export interface PlacedGroup extends OrderGroup {
  readonly row: number;
}

/** Gives each group its rows: one for its title and subtotals, and one per line. */
export const placeGroups = (groups: readonly OrderGroup[]): readonly PlacedGroup[] => {
  let next = FIRST_ORDER_ROW;
  return groups.map((group) => {
    const row = next;
    next += group.lines.length + 1;
    return { ...group, row };
  });
};

export const rowOfItem = (groups: readonly PlacedGroup[], item: string): number => {
  const [row] = groups.flatMap((group) =>
    group.lines.flatMap((line, index) => (line.item === item ? [group.row + 1 + index] : [])),
  );
  if (row === undefined) throw new Error(`The order has no line of ${item}.`);
  return row;
};

export const groupCells = ({ title, row, lines }: PlacedGroup): PlannedCell[] =>
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
