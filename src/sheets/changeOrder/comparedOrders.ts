import { itemKey } from "../../../shared/kinds/orderLines";
import { absoluteA1, sheetPrefix } from "../../workbook/address";
import { isEmpty } from "../../workbook/formula";
import type { OrderColumn } from "../orderSheet/orderLayout";
import type { ReadLine, ReadOrder } from "../orderSheet/readOrder";
import type { SealedBlock } from "../sealedBlock";
import type { Measurement } from "../trace/measurements";

/** Renamed items: the line at base by the `itemKey` of the name now. */
export type RenamedItems = ReadonlyMap<string, ReadLine>;

/** One of the two orders that a change order compares. */
export interface ComparedOrder {
  readonly order: ReadOrder;
  readonly measurements: readonly Measurement[];
  /** What its seal covers; undefined where it still moves. */
  readonly sealed: SealedBlock | undefined;
}

/** A line of the change order without its figures. */
export interface Item {
  readonly item: string;
  readonly unit: string;
  readonly orderUnit: string;
  /** Its line at base, if it had another name there. */
  readonly former?: ReadLine;
}

/** Whether something of an item is needed or ordered: the other lines of an order are quiet, and a signed one lacks them. */
export const isNeededOrOrdered = ({ needed, toOrder }: ReadLine): boolean =>
  (needed ?? 0) > 0 || (toOrder ?? 0) > 0;

/** `packs of 12, 10% waste`: how the quantity ordered follows from the quantity needed. */
const packedIn = ({ orderUnit, perPack, waste }: ReadLine): string => {
  if (orderUnit === "") return "";
  const packs = perPack !== null && perPack > 1 ? `${orderUnit} of ${perPack}` : orderUnit;
  return waste !== null && waste > 0 ? `${packs}, ${Number((waste * 100).toFixed(2))}% waste` : packs;
};

/** `ft`, or `ft to m` where the two orders differ. */
const unitOf = (lines: readonly ReadLine[], unitIn: (line: ReadLine) => string): string => {
  const units = lines.map(unitIn).filter((unit) => unit !== "");
  return [...new Map(units.map((unit) => [itemKey(unit), unit])).values()].join(" to ");
};

/**
 * Every item that either order needs or orders: the base's first, in its sequence, then the added ones. Packs are shown where both
 * orders are signed.
 */
export const itemsOf = (base: ComparedOrder, now: ComparedOrder, renamed: RenamedItems): Item[] => {
  const byItem = new Map<string, ReadLine[]>();
  const keyNow = new Map([...renamed].map(([key, former]) => [itemKey(former.item), key]));
  const add = (key: string, line: ReadLine): unknown => byItem.set(key, [...(byItem.get(key) ?? []), line]);
  for (const line of base.order.lines) add(keyNow.get(itemKey(line.item)) ?? itemKey(line.item), line);
  for (const line of now.order.lines) add(itemKey(line.item), line);
  return [...byItem].flatMap(([key, lines]): Item[] => {
    const former = renamed.get(key);
    const named = former ? lines.at(-1) : lines[0];
    const wanted = lines.filter(isNeededOrOrdered);
    if (!named || wanted.length === 0) return [];
    return [
      {
        item: named.item,
        unit: unitOf(wanted, ({ unit }) => unit),
        orderUnit: unitOf(wanted, base.sealed && now.sealed ? packedIn : ({ orderUnit }) => orderUnit),
        ...(former && { former }),
      },
    ];
  });
};

/** A column of an order's lines, as another sheet calls it. */
export const orderColumnReference = (
  { sheet, headingRow, lastRow, columns }: ReadOrder,
  column: OrderColumn,
): string => {
  const at = columns[column] ?? 0;
  return `${sheetPrefix(sheet)}${absoluteA1({ row: headingRow + 1, column: at })}:${absoluteA1({ row: lastRow, column: at })}`;
};

/** `itemKey` as a formula, of a cell or of a column. */
export const itemKeyFormula = (cells: string): string => `LOWER(TRIM(SUBSTITUTE(${cells},UNICHAR(160)," ")))`;

/**
 * A column of an order and the cell below it: never a single cell, which is no list to MATCH once it is worked on. What stands
 * below is found last.
 */
const columnAndBelow = (order: ReadOrder, column: OrderColumn): string =>
  orderColumnReference({ ...order, lastRow: order.lastRow + 1 }, column);

/** The cell of an order that bears the name of a line, as another sheet calls it. */
export const itemNameReference = ({ sheet, columns }: ReadOrder, { row }: ReadLine): string =>
  `${sheetPrefix(sheet)}${absoluteA1({ row, column: columns.item ?? 0 })}`;

/** An order, and the cell with an item's name in it. */
export interface LookedUpItem {
  readonly order: ReadOrder;
  readonly name: string;
}

/** The position of an item in an order's column of items. EXACT, because MATCH alone reads `*` and `?` as wildcards. */
const matchFormula = ({ order, name }: LookedUpItem): string =>
  `MATCH(TRUE,EXACT(${itemKeyFormula(columnAndBelow(order, "item"))},${itemKeyFormula(name)}),0)`;

/** A figure of an item in an order, found by its name; `otherwise` where there is no such line or the cell is blank. */
export const lookUp = (sought: LookedUpItem, column: OrderColumn, otherwise: string): string => {
  const { order } = sought;
  const place = matchFormula(sought);
  const found = `INDEX(${columnAndBelow(order, column)},${place})`;
  return `IF(ISNA(${place}),${otherwise},IF(${isEmpty(found)},${otherwise},${found}))`;
};

/** What two orders say of an item's unit, each as a formula; capitals and spaces aside. */
const unitsIn = (
  sides: readonly [LookedUpItem, LookedUpItem],
  column: "unit" | "orderUnit",
): [string, string] =>
  sides.map((sought) => itemKeyFormula(lookUp(sought, column, '""'))) as [string, string];

/** Whether two orders give an item in different units. */
export const unitsDiffer = (base: LookedUpItem, now: LookedUpItem): string =>
  unitsIn([base, now], "unit").join("<>");

/** Whether two orders buy an item in unlike packs, where both order some; a blank pack is one. */
export const packsDiffer = (base: LookedUpItem, now: LookedUpItem): string => {
  const [unitThen, unitNow] = unitsIn([base, now], "orderUnit");
  const packIn = (sought: LookedUpItem): string =>
    sought.order.columns.perPack === undefined ? "1" : lookUp(sought, "perPack", "1");
  // A pack of so many holds what is measured, and so does what is ordered in no unit of its own.
  const holdsMeasured = `OR(${packIn(base)}<>1,LEN(${unitThen})=0)`;
  const holdsUnlike = `AND(${holdsMeasured},${unitsDiffer(base, now)})`;
  return `OR(${unitThen}<>${unitNow},${packIn(base)}<>${packIn(now)},${holdsUnlike})`;
};
