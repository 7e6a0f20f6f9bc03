import { isEmpty } from "../../workbook/formula";
import { formula, number, text, type CellContent, type PlannedCell } from "../../workbook/plan";
import { lineValue, type ExistingChangeOrder } from "./existingChangeOrders";
import {
  CHANGE_COLUMNS,
  changeCell,
  EACH_LINE,
  FIRST_LINE_ROW,
  termCell,
  DIFFERENT_PACKS,
  DIFFERENT_UNITS,
  type ChangeColumn,
  type CalculatedColumn,
} from "./changeOrderLayout";
import {
  packsDiffer,
  lookUp,
  unitsDiffer,
  itemNameReference,
  type Item,
  type ComparedOrder,
  type LookedUpItem,
} from "./comparedOrders";

const MONEY = "#,##0.00;-#,##0.00";
/** Most quantities are whole. */
const COUNT = "General";
/** Decimals of a difference: programs show and seal binary floating-point noise differently. */
const DECIMALS = 6;
const FORMATS: Partial<Record<ChangeColumn, string>> = {
  neededBase: COUNT,
  neededNow: COUNT,
  neededChange: COUNT,
  orderBase: COUNT,
  orderNow: COUNT,
  orderChange: COUNT,
  priceBase: MONEY,
  priceNow: MONEY,
  material: MONEY,
  laborEach: MONEY,
  labor: MONEY,
  tax: MONEY,
};

/** A quantity at its price, to the cent; an error where it has none, so that no total passes over it. */
const extended = (quantity: string, price: string): string =>
  `IF(${quantity}=0,0,IF(ISNUMBER(${price}),ROUND(${quantity}*${price},2),NA()))`;

const lineCells = (
  item: Item,
  index: number,
  lines: number,
  base: ComparedOrder,
  now: ComparedOrder,
  last: ExistingChangeOrder | undefined,
): PlannedCell[] => {
  const row = FIRST_LINE_ROW + index;
  const at = (column: ChangeColumn): string => changeCell(row, column);
  const name = `$${at("item")}`;
  const then: LookedUpItem = {
    order: base.order,
    name: item.former ? itemNameReference(base.order, item.former) : name,
  };
  const today: LookedUpItem = { order: now.order, name };
  const found = (
    sought: LookedUpItem,
    column: "needed" | "toOrder" | "price",
    otherwise: string,
  ): CellContent => formula(`=${lookUp(sought, column, otherwise)}`);
  const [before, after] = [at("orderBase"), at("orderNow")];
  const sameOrder = `IF(${at("neededChange")}=0,"unchanged","same order")`;
  /** Compares only where both orders have some. */
  const ifBoth = (one: string, other: string, isSo: string): string =>
    `IF(${one}>0,IF(${other}>0,${isSo},FALSE),FALSE)`;
  const isUnlike = ifBoth(before, after, packsDiffer(then, today));
  const [needThen, needNow] = [at("neededBase"), at("neededNow")];
  const isUnlikeNeed = ifBoth(needThen, needNow, unitsDiffer(then, today));
  const isSame = `AND(ISNUMBER(${at("orderChange")}),${before}=${after},OR(${before}=0,${at("priceBase")}=${at("priceNow")}))`;
  const isStill = `AND(ISNUMBER(${at("orderChange")}),${before}=${after},${isEmpty(at("priceBase"))},${isEmpty(at("priceNow"))})`;
  /** Different packs have no known amount: the cell stays blank. */
  const unlessUnlike = (money: string): CellContent =>
    formula(`=IF(ISTEXT(${at("orderChange")}),"",${money})`);
  const lineTax = `IF(${at("taxable")}="yes",ROUND(${at("material")}*${termCell(lines, "taxRate")},2),0)`;
  const worked: Record<CalculatedColumn, CellContent> = {
    what: formula(`=IF(${isSame},${sameOrder},IF(${before}=0,"added",IF(${after}=0,"removed","changed")))`),
    neededBase: found(then, "needed", "0"),
    neededNow: found(today, "needed", "0"),
    neededChange: formula(
      `=IF(${isUnlikeNeed},"${DIFFERENT_UNITS}",ROUND(${needNow}-${needThen},${DECIMALS}))`,
    ),
    orderBase: found(then, "toOrder", "0"),
    orderNow: found(today, "toOrder", "0"),
    orderChange: formula(`=IF(${isUnlike},"${DIFFERENT_PACKS}",ROUND(${after}-${before},${DECIMALS}))`),
    priceBase: found(then, "price", '""'),
    priceNow: found(today, "price", '""'),
    // An unchanged item without a price costs nothing.
    material: unlessUnlike(
      `IF(${isStill},0,ROUND(${extended(after, at("priceNow"))}-${extended(before, at("priceBase"))},2))`,
    ),
    labor: unlessUnlike(`ROUND(${at("orderChange")}*${at("laborEach")},2)`),
    tax: unlessUnlike(`IF(${termCell(lines, "taxRounding")}="${EACH_LINE}",${lineTax},0)`),
  };
  const results: Partial<Record<ChangeColumn, CellContent>> = {
    ...worked,
    item: text(item.item),
    unit: text(item.unit),
    orderUnit: text(item.orderUnit),
  };
  const nameThen = item.former?.item ?? item.item;
  return (Object.keys(CHANGE_COLUMNS) as ChangeColumn[]).map((column): PlannedCell => {
    const numberFormat = FORMATS[column];
    const shared = { row, column: CHANGE_COLUMNS[column], ...(numberFormat && { numberFormat }) };
    if (column === "taxable") {
      const isExempt = last && lineValue(last, nameThen, "taxable") === "no";
      return { ...shared, content: text(isExempt ? "no" : "yes"), style: "input", choices: ["yes", "no"] };
    }
    if (column === "laborEach") {
      const labor = last && lineValue(last, nameThen, "laborEach");
      return { ...shared, content: typeof labor === "number" ? number(labor) : null, style: "input" };
    }
    const content = results[column] ?? null;
    if (column === "reason") return { ...shared, content: null, style: "words" };
    return { ...shared, content, style: content === null ? "input" : "result" };
  });
};

/**
 * One row per item: what happened, by how much, at what price. Labor and tax carry over from the last change order, so that a
 * deduction credits what was charged.
 */
export const changeLines = (
  items: readonly Item[],
  base: ComparedOrder,
  now: ComparedOrder,
  last: ExistingChangeOrder | undefined,
): PlannedCell[] => items.flatMap((item, index) => lineCells(item, index, items.length, base, now, last));
