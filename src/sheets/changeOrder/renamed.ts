import { itemKey } from "../../../shared/kinds/orderLines";
import type { ReadLine } from "../orderSheet/readOrder";
import { matchNames, rowKey } from "./sameNames";
import type { Side } from "./sides";

/** What goes by another name than at base: its line there, by the `itemKey` of its name now. */
export type Renamed = ReadonlyMap<string, ReadLine>;

/**
 * Items whose name alone has changed on the sheet that lists them, such as a trim that is called otherwise: what was agreed of
 * their labor and tax goes on, and nothing is charged for a name. An item that the order itself names is what its name says.
 */
export const renamedItems = (base: Side, now: Side, orderSheet: string): Renamed => {
  const { later, formerNames } = matchNames(base.measures, now.measures, orderSheet);
  const formerly = new Map(
    later.flatMap((measure): [string, string][] => {
      const former = formerNames.get(rowKey(measure));
      return former === undefined ? [] : [[itemKey(measure.row), itemKey(former)]];
    }),
  );
  const [then, after] = [base, now].map(
    ({ order }) => new Map(order.lines.map((line) => [itemKey(line.item), line])),
  ) as [Map<string, ReadLine>, Map<string, ReadLine>];
  return new Map(
    [...after.keys()].flatMap((key): [string, ReadLine][] => {
      const formerKey = formerly.get(key) ?? key;
      const former = then.get(formerKey);
      return former && !then.has(key) && !after.has(formerKey) ? [[key, former]] : [];
    }),
  );
};
