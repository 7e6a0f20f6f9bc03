import { itemKey } from "../../../shared/kinds/orderLines";
import type { SheetCellAddress } from "../../workbook/address";
import type { Contents } from "../../workbook/contents";
import type { OrderColumn } from "../orderSheet/orderLayout";
import type { ReadLine, ReadOrder } from "../orderSheet/readOrder";
import type { LiveOrder } from "../signedOrder/freezeOrder";
import type { CellLabel } from "../trace/cellLabels";
import { allPrecedents } from "../trace/precedents";
import { changedInputs, deletedInputs, groupedByRow, isInput } from "./changedInputs";
import type { ComparedOrder, RenamedItems } from "./comparedOrders";
import { lengthChangeText } from "./measurementText";
import { rowKey } from "./nameMatching";
import {
  compareOrders,
  labelsOfCells,
  type MeasurementsByKey,
  type OrderComparison,
} from "./orderComparison";
import { rowChange, rowChangeTexts, type RowChange } from "./rowChanges";
import { edgeFollowedBy, isRunOfOtherEdge, runFeetByRow } from "./trimRuns";

/** What changed the quantity or the price of an item, one sentence per cause. */
export interface ItemCauses {
  readonly item: string;
  readonly sentences: readonly string[];
}

/** Quantities don't depend on these, though formulas refer to a whole block that holds them. */
const NO_QUANTITY_INPUT = /\b(?:price|weight|pallet)\b/i;

const renamedText = (former: string, now: string): string => `${former} is now called ${now}`;

/** `South is now called Back`: shown, though a new name alone changes no quantity. */
const renamedRows = (
  { formerNames, renamed }: OrderComparison,
  precedents: readonly CellLabel[],
): string[] => [
  ...new Set(
    precedents.flatMap((key) => {
      const former = formerNames.get(rowKey(key));
      return former === undefined || renamed.has(itemKey(key.row)) ? [] : [renamedText(former, key.row)];
    }),
  ),
];

const lineCells = (live: ReadOrder, row: number, columns: readonly OrderColumn[]): SheetCellAddress[] =>
  columns.flatMap((column) => {
    const at = live.columns[column];
    return at === undefined ? [] : [{ sheet: live.sheet, row, column: at }];
  });

const quantityCauses = (
  comparison: OrderComparison,
  live: ReadOrder,
  item: ReadLine,
  row: number,
  change: number,
): string[] => {
  const { contents } = comparison;
  const from = lineCells(live, row, ["needed", "toOrder"]);
  const isOtherRun = isRunOfOtherEdge(comparison, item.item);
  const otherLines = new Set(live.lines.map((line) => line.row).filter((line) => line !== row));
  const isOtherLine = (cell: SheetCellAddress): boolean =>
    cell.sheet === live.sheet && otherLines.has(cell.row);
  const precedents = labelsOfCells(contents, allPrecedents(contents, from, isOtherRun));
  // Counts that belong to another line of the order are left out: nails depend on panels, but don't count them.
  const ownCells = allPrecedents(contents, from, (cell) => isOtherRun(cell) || isOtherLine(cell));
  const own = labelsOfCells(contents, ownCells);
  const changed = changedInputs(comparison, [
    ...precedents,
    ...deletedInputs(comparison, item.item, precedents),
  ]).filter((key) => !NO_QUANTITY_INPUT.test(`${key.row} ${key.heading}`));
  const renamed = renamedRows(comparison, precedents);
  if (changed.length === 0)
    return [...renamed, "no input that can be traced has changed: was a formula overwritten?"];
  const rows = groupedByRow(changed).map((keys) => rowChange(comparison, keys, own, item.item));
  const runs = runFeetByRow(comparison, item.item, ownCells, new Set(changed.map(rowKey)));
  const follows = String(edgeFollowedBy(comparison, item.item));
  const withRuns = rows.map((each) => ({
    ...each,
    lengths: [...each.lengths, ...lengthChangeText(runs.get(rowKey(each.row)) ?? 0, follows)],
  }));
  const isOwn = ({ sheet, row: name }: RowChange["row"]): boolean =>
    sheet === live.sheet && itemKey(name) === itemKey(item.item);
  return [...renamed, ...rowChangeTexts(rows.length === 1 ? rows : withRuns, change, item, isOwn)];
};

const priceCauses = (comparison: OrderComparison, live: ReadOrder, row: number): string[] => {
  const precedents = labelsOfCells(
    comparison.contents,
    allPrecedents(comparison.contents, lineCells(live, row, ["price"])),
  );
  return groupedByRow(changedInputs(comparison, precedents)).map(
    (keys) => rowChange(comparison, keys, [], "").text,
  );
};

/** An item that is no longer on the order was removed from the sheet that lists it, or from the order itself. */
const removedItemTexts = ({ order, base, now }: OrderComparison, item: string): string[] => {
  const listing = (known: MeasurementsByKey): Set<string> =>
    new Set(
      [...known.values()].flatMap((measurement) =>
        isInput(measurement) && measurement.sheet !== order && itemKey(measurement.row) === itemKey(item)
          ? [measurement.sheet]
          : [],
      ),
    );
  const listedNow = listing(now);
  const left = [...listing(base)].filter((sheet) => !listedNow.has(sheet));
  return (left.length === 0 ? [order] : left).map((sheet) => `${item} was removed from "${sheet}"`);
};

const unitText = ({ unit }: ReadLine): string => (unit.trim() === "" ? "no unit" : unit);

/** An item that both orders need, in different units: the numbers can't be compared. */
const unitChangeText = (old: ReadLine | undefined, current: ReadLine | undefined): string[] =>
  old?.needed && current?.needed && itemKey(old.unit) !== itemKey(current.unit)
    ? [`now measured in ${unitText(current)}, before in ${unitText(old)}`]
    : [];

/**
 * What caused each change of quantity and price: the inputs that differ between the two orders, traced through the formulas of the
 * live order. The values are those of the two orders, found by their names.
 */
export const causesOfChanges = (
  contents: Contents,
  live: LiveOrder,
  base: ComparedOrder,
  now: ComparedOrder,
  renamed: RenamedItems,
): ItemCauses[] => {
  const { order } = live;
  const comparison = compareOrders(contents, live, base, now, renamed);
  const lines = (compared: ComparedOrder): ReadonlyMap<string, ReadLine> =>
    new Map(compared.order.lines.map((line) => [itemKey(line.item), line]));
  const [linesThen, linesNow, liveLines] = [lines(base), lines(now), lines({ ...now, order })];
  const formerItems = new Set([...renamed.values()].map((former) => itemKey(former.item)));
  const listed = [...linesThen.keys()].filter((key) => !formerItems.has(key));
  return [...new Set([...listed, ...linesNow.keys()])].flatMap((key): ItemCauses[] => {
    const former = renamed.get(key);
    const [old, current] = [former ?? linesThen.get(key), linesNow.get(key)];
    const line = current ?? old;
    const unitChange = unitChangeText(old, current);
    const needed = (current?.needed ?? 0) - (old?.needed ?? 0);
    const ordered = (current?.toOrder ?? 0) - (old?.toOrder ?? 0);
    const isQuantityChanged = needed !== 0 || ordered !== 0 || unitChange.length > 0;
    const isRepriced = old !== undefined && current !== undefined && old.price !== current.price;
    const row = liveLines.get(key)?.row;
    if (!line || (!isQuantityChanged && !isRepriced && !former)) return [];
    if (row === undefined)
      return [
        {
          item: line.item,
          sentences: removedItemTexts(comparison, line.item),
        },
      ];
    const sentences = [
      ...(former ? [renamedText(former.item, line.item)] : []),
      ...unitChange,
      ...(isQuantityChanged
        ? quantityCauses(comparison, order, line, row, unitChange.length === 0 ? needed : 0)
        : []),
      ...(isRepriced ? priceCauses(comparison, order, row) : []),
    ];
    return sentences.length === 0 ? [] : [{ item: line.item, sentences: [...new Set(sentences)] }];
  });
};
