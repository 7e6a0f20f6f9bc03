import { itemKey } from "../../../shared/kinds/orderLines";
import { absoluteA1, sheetPrefix } from "../../workbook/address";
import { isEmpty } from "../../workbook/formula";
import type { OrderColumn } from "../orderSheet/orderLayout";
import type { ReadLine, ReadOrder } from "../orderSheet/readOrder";
import type { SealedBlock } from "../sealedBlock";
import type { Measurement } from "../trace/measurements";

/** What goes by another name than at base: its line there, by the `itemKey` of its name now. */
export type RenamedItems = ReadonlyMap<string, ReadLine>;

/** One of the two orders that a change order compares. */
export interface ComparedOrder {
  readonly order: ReadOrder;
  readonly measurements: readonly Measurement[];
  /** What its seal covers; undefined where it still moves. */
  readonly sealed: SealedBlock | undefined;
}

/** A line of the change order before any figure: who it is, and what it is counted in. */
export interface Item {
  readonly item: string;
  readonly unit: string;
  readonly orderUnit: string;
  /** Its line at base, where it was called otherwise there. */
  readonly former?: ReadLine;
}

/** Whether something of an item is needed or ordered: the other lines of an order are quiet, and a signed one lacks them. */
export const isNeededOrOrdered = ({ needed, toOrder }: ReadLine): boolean =>
  (needed ?? 0) > 0 || (toOrder ?? 0) > 0;

/** `packs of 12, 10% waste`: by these a customer follows from what is needed to what is ordered. */
const packedIn = ({ orderUnit, perPack, waste }: ReadLine): string => {
  if (orderUnit === "") return "";
  const packs = perPack !== null && perPack > 1 ? `${orderUnit} of ${perPack}` : orderUnit;
  return waste !== null && waste > 0 ? `${packs}, ${Number((waste * 100).toFixed(2))}% waste` : packs;
};

/** `ft`, or `ft to m` where the two sides differ; what one of them wants none of is in the other's. */
const unitOf = (lines: readonly ReadLine[], unitIn: (line: ReadLine) => string): string => {
  const units = lines.map(unitIn).filter((unit) => unit !== "");
  return [...new Map(units.map((unit) => [itemKey(unit), unit])).values()].join(" to ");
};

/**
 * Every item of which one side needs or orders something: the base's first, in its order, then what was added. How it is packed
 * is said where nothing moves any more.
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

/** An order, and the cell that says by what name an item stands in it. */
export interface LookedUpItem {
  readonly order: ReadOrder;
  readonly name: string;
}

/** Where an item stands in an order's column of items, letter by letter: MATCH alone takes some signs for any text. */
const matchFormula = ({ order, name }: LookedUpItem): string =>
  `MATCH(TRUE,EXACT(${itemKeyFormula(columnAndBelow(order, "item"))},${itemKeyFormula(name)}),0)`;

/** What an order says of an item, found by its name; `otherwise` where it has no such line, or that is blank. */
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
