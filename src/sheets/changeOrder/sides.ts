import { itemKey } from "../../../shared/kinds/orderLines";
import { a1, absoluteA1, sheetPrefix } from "../address";
import { isEmpty } from "../formula";
import type { OrderColumn } from "../orderSheet/layout";
import type { ReadLine, ReadOrder } from "../orderSheet/readOrder";
import type { SealedBlock } from "../sealedBlock";
import type { Measure } from "../trace/measures";

/** One of the two orders that a change order compares. */
export interface Side {
  readonly order: ReadOrder;
  readonly measures: readonly Measure[];
  /** What its seal covers; undefined where it still moves. */
  readonly sealed: SealedBlock | undefined;
}

/** A line of the change order before any figure: who it is, and what it is counted in. */
export interface Item {
  readonly item: string;
  readonly unit: string;
  readonly orderUnit: string;
}

const isWanted = ({ needed, toOrder }: ReadLine): boolean => (needed ?? 0) > 0 || (toOrder ?? 0) > 0;

/** `ft`, or `ft to m` where the two sides differ; what one of them wants none of is in the other's. */
const unitOf = (lines: readonly ReadLine[], column: "unit" | "orderUnit"): string => {
  const units = lines.map((line) => line[column]).filter((unit) => unit !== "");
  return [...new Map(units.map((unit) => [itemKey(unit), unit])).values()].join(" to ");
};

/** Every item of which one side needs or orders something: the base's first, in its order, then what was added. */
export const itemsOf = (base: Side, now: Side): Item[] => {
  const byItem = new Map<string, ReadLine[]>();
  for (const line of [...base.order.lines, ...now.order.lines]) {
    const key = itemKey(line.item);
    byItem.set(key, [...(byItem.get(key) ?? []), line]);
  }
  return [...byItem.values()].flatMap((lines): Item[] => {
    const [first] = lines;
    const wanted = lines.filter(isWanted);
    if (!first || wanted.length === 0) return [];
    return [{ item: first.item, unit: unitOf(wanted, "unit"), orderUnit: unitOf(wanted, "orderUnit") }];
  });
};

/** A column of an order's lines, as another sheet calls it. */
export const orderColumn = (
  { sheet, headingRow, lastRow, columns }: ReadOrder,
  column: OrderColumn,
): string => {
  const at = columns[column] ?? 0;
  return `${sheetPrefix(sheet)}${absoluteA1({ row: headingRow + 1, column: at })}:${absoluteA1({ row: lastRow, column: at })}`;
};

/** `itemKey` as a formula, of a cell or of a column. */
export const itemKeyOf = (cells: string): string => `LOWER(TRIM(SUBSTITUTE(${cells},UNICHAR(160)," ")))`;

/**
 * A column of an order and the cell below it: never a single cell, which is no list to MATCH once it is worked on. What stands
 * below is found last.
 */
const columnAndBelow = (order: ReadOrder, column: OrderColumn): string =>
  orderColumn({ ...order, lastRow: order.lastRow + 1 }, column);

/** Where an item stands in an order's column of items, letter by letter: MATCH alone takes some signs for any text. */
const placeOf = (cell: string, order: ReadOrder): string =>
  `MATCH(TRUE,EXACT(${itemKeyOf(columnAndBelow(order, "item"))},${itemKeyOf(cell)}),0)`;

/** What an order says of the item in a cell, found by its name; `otherwise` where it has no such line, or the cell is blank. */
export const lookUp = (order: ReadOrder, column: OrderColumn, row: number, otherwise: string): string => {
  const place = placeOf(`$${a1({ row, column: 0 })}`, order);
  const found = `INDEX(${columnAndBelow(order, column)},${place})`;
  return `IF(ISNA(${place}),${otherwise},IF(${isEmpty(found)},${otherwise},${found}))`;
};

/** What two orders say of an item's unit, each as a formula; capitals and spaces aside. */
const unitsIn = (
  orders: readonly [ReadOrder, ReadOrder],
  column: "unit" | "orderUnit",
  row: number,
): [string, string] => orders.map((order) => itemKeyOf(lookUp(order, column, row, '""'))) as [string, string];

/** Whether two orders measure an item in unlike units. */
export const measuresUnlike = (base: ReadOrder, now: ReadOrder, row: number): string =>
  unitsIn([base, now], "unit", row).join("<>");

/** Whether two orders buy an item in unlike packs, where both order some; a blank pack is one. */
export const buysUnlike = (base: ReadOrder, now: ReadOrder, row: number): string => {
  const [unitThen, unitNow] = unitsIn([base, now], "orderUnit", row);
  const packIn = (order: ReadOrder): string =>
    order.columns.perPack === undefined ? "1" : lookUp(order, "perPack", row, "1");
  // A pack of so many holds what is measured, and so does what is ordered in no unit of its own.
  const holdsMeasured = `OR(${packIn(base)}<>1,LEN(${unitThen})=0)`;
  const holdsUnlike = `AND(${holdsMeasured},${measuresUnlike(base, now, row)})`;
  return `OR(${unitThen}<>${unitNow},${packIn(base)}<>${packIn(now)},${holdsUnlike})`;
};
