import { itemKey } from "../../../shared/kinds/orderLines";
import type { ReadLine, ReadOrder } from "../orderSheet/readOrder";
import { matchNames, rowKey, type ItemNames } from "./nameMatching";
import type { RenamedItems, ComparedOrder } from "./comparedOrders";

const linesByItem = ({ lines }: ReadOrder): ReadonlyMap<string, ReadLine> =>
  new Map(lines.map((line) => [itemKey(line.item), line]));

/** How an item is sold, whatever its quantity. */
const soldAs = ({ unit, orderUnit, perPack, price }: ReadLine): string =>
  [itemKey(unit), itemKey(orderUnit), perPack, price].join("\n");

/** An item may have been renamed where each name is in only one of the orders and both are sold alike. */
export const itemNames = (base: ReadOrder, now: ReadOrder): ItemNames => {
  const [then, after] = [linesByItem(base), linesByItem(now)];
  const isItem = (name: string): boolean => [then, after].some((lines) => lines.has(itemKey(name)));
  return {
    isItem,
    mayBeRenamed: (formerName, nameNow) => {
      if (!isItem(formerName) && !isItem(nameNow)) return true;
      const [former, current] = [then.get(itemKey(formerName)), after.get(itemKey(nameNow))];
      if (!former || !current || soldAs(former) !== soldAs(current)) return false;
      return !then.has(itemKey(nameNow)) && !after.has(itemKey(formerName));
    },
  };
};

/**
 * Items whose name alone changed on the sheet that lists them, such as a renamed trim: their labor and tax carry over, and the new
 * name costs nothing. An item whose name is typed on the order itself is never matched this way.
 */
export const renamedItems = (base: ComparedOrder, now: ComparedOrder, orderSheet: string): RenamedItems => {
  const { later, formerNames } = matchNames(
    base.measurements,
    now.measurements,
    orderSheet,
    itemNames(base.order, now.order),
  );
  const pairs = new Map(
    later.flatMap((measurement): [string, { key: string; formerKey: string }][] => {
      const former = formerNames.get(rowKey(measurement));
      const [key, formerKey] = [itemKey(measurement.row), itemKey(former ?? "")];
      return former === undefined ? [] : [[`${key}\n${formerKey}`, { key, formerKey }]];
    }),
  );
  const then = linesByItem(base.order);
  return new Map(
    [...pairs.values()].flatMap(({ key, formerKey }): [string, ReadLine][] => {
      const former = then.get(formerKey);
      // Two sheets may list items, and disagree.
      const fitting = [...pairs.values()].filter((pair) => pair.key === key || pair.formerKey === formerKey);
      return former && fitting.length === 1 ? [[key, former]] : [];
    }),
  );
};
