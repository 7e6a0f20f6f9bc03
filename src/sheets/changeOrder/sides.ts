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

/** Every item of which one side needs or orders something: the base's first, in its order, then what was added. */
export const itemsOf = (base: Side, now: Side): Item[] => {
  const lines = [...base.order.lines, ...now.order.lines];
  const wanted = new Set(lines.filter(isWanted).map(({ item }) => itemKey(item)));
  const items = new Map<string, Item>();
  for (const { item, unit, orderUnit } of lines)
    if (wanted.has(itemKey(item)) && !items.has(itemKey(item)))
      items.set(itemKey(item), { item, unit, orderUnit });
  return [...items.values()];
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

/** Whether two orders buy an item in unlike packs, where both order some; a blank pack is one. */
export const buysUnlike = (base: ReadOrder, now: ReadOrder, row: number): string => {
  const unitIn = (order: ReadOrder): string => itemKeyOf(lookUp(order, "orderUnit", row, '""'));
  const packIn = (order: ReadOrder): string =>
    order.columns.perPack === undefined ? "1" : lookUp(order, "perPack", row, "1");
  return `OR(${unitIn(base)}<>${unitIn(now)},${packIn(base)}<>${packIn(now)})`;
};
