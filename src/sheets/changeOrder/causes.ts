import { itemKey } from "../../../shared/kinds/orderLines";
import type { Contents } from "../../workbook/contents";
import { ORDER, ORDER_HEADINGS, type OrderColumn } from "../orderSheet/orderLayout";
import type { ReadLine, ReadOrder } from "../orderSheet/readOrder";
import type { LiveOrder } from "../signedOrder/freezeOrder";
import { measurementKey, type Measurement, type MeasurementKey } from "../trace/measurements";
import type { SheetCellAddress } from "../../workbook/address";
import { allPrecedents } from "../trace/precedents";
import { countChangeText, headingText, lengthChangeText, parsedValue, valueText } from "./measurementText";
import { matchNames, rowKey } from "./nameMatching";
import { itemNames } from "./renamedItems";
import { EDGE, edgeFollowedBy, isRunOfOtherEdge, runFeetByRow } from "./trimRuns";
import { labelsOfCells, type MeasurementsByKey, type OrderComparison } from "./orderComparison";
import type { RenamedItems, ComparedOrder } from "./comparedOrders";

/** Why the quantity or the price of an item moved, a sentence for each thing that did. */
export interface ItemCauses {
  readonly item: string;
  readonly sentences: readonly string[];
}

const byKey = (measurements: readonly Measurement[]): MeasurementsByKey =>
  new Map(measurements.map((measurement) => [measurementKey(measurement), measurement]));

/** Typed in another way it is the same still. */
const differ = (a: Measurement | undefined, b: Measurement | undefined): boolean =>
  (a && parsedValue(a)) !== (b && parsedValue(b));

/** No quantity is worked out from these, though a whole block that holds them is read. */
const NOT_OF_QUANTITY = /\b(?:price|weight|pallet)\b/i;

/** Beside the panels of a plane its courses tell what happened, though panels are placed one by one. */
const [PANELS_LAID, COURSES] = ["Panels, laid", "Courses"];

/** Headings of counts are plurals: `Courses`, `Stock lengths`. */
const COUNTED = /s\b/i;

/** What an order works out is no measurement behind it: it stands in its lines. */
const orderedOn = (sheet: string, { lines }: ReadOrder): Measurement[] =>
  lines.flatMap(({ item, ...line }) =>
    (["needed", "toOrder", "price"] as const).flatMap((column): Measurement[] => {
      const value = line[column];
      const heading = ORDER_HEADINGS[ORDER[column]] ?? "";
      return value === null ? [] : [{ sheet, row: item, heading, unit: "", value, kind: "result" }];
    }),
  );

const isInput = (measurement: Measurement | undefined): boolean => measurement?.kind === "input";

/** `slope length 18' 0" to 19' 6"`. */
const moveInWords = (
  key: MeasurementKey,
  base: Measurement | undefined,
  now: Measurement | undefined,
): string => {
  const made = base?.kind === "result" && now?.kind === "input" ? ", typed over what was worked out" : "";
  return `${headingText(key)} ${valueText(base)} to ${valueText(now)}${made}`.trim();
};

/** A run that has no name goes by its edge: `hip, row 54`. */
const rowInFull = (base: MeasurementsByKey, now: MeasurementsByKey, sheet: string, row: string): string => {
  const edgeKey = measurementKey({ sheet, row, heading: EDGE });
  const edge = (now.get(edgeKey) ?? base.get(edgeKey))?.value;
  return edge !== undefined && /^row \d+$/.test(row) ? `${edge}, ${row},` : row;
};

/** What changed in one row, and what came of it in that same row: things, and lengths of the item itself. */
interface RowChange {
  readonly row: Pick<MeasurementKey, "sheet" | "row">;
  readonly what: string;
  readonly counts: readonly string[];
  readonly lengths: readonly string[];
}

const rowInWords = (
  { order, base, now }: OrderComparison,
  keys: readonly MeasurementKey[],
  own: readonly MeasurementKey[],
  item: string,
): RowChange => {
  const [{ sheet, row } = { sheet: "", row: "" }] = keys;
  const pairs = keys.map(
    (key) => [key, base.get(measurementKey(key)), now.get(measurementKey(key))] as const,
  );
  const values = (of: (pair: (typeof pairs)[number]) => Measurement | undefined): string =>
    pairs
      .flatMap((pair) => (of(pair) ? [`${headingText(pair[0])} ${valueText(of(pair))}`.trim()] : []))
      .join(", ");
  const isRowOf = (known: MeasurementsByKey): boolean =>
    [...known.values()].some(
      (measurement) =>
        (isInput(measurement) || measurement.sheet === order) &&
        measurement.row === row &&
        measurement.sheet === sheet,
    );
  const called = rowInFull(base, now, sheet, row);
  const what = !isRowOf(base)
    ? `${called} is new: ${values(([, , after]) => after)}`
    : !isRowOf(now)
      ? `${called} is gone (${values(([, before]) => before)})`
      : `${called} ${pairs.map(([key, before, after]) => moveInWords(key, before, after)).join(", ")}`;
  const ofSheet = own.filter((key) => key.sheet === sheet);
  const ofRow = ofSheet.filter((key) => key.row === row);
  // A row that is gone had the columns that the others have.
  const headings = new Set((isRowOf(now) ? ofRow : ofSheet).map(({ heading }) => heading));
  const counted = headings.has(PANELS_LAID) ? new Set([COURSES, ...headings]) : headings;
  const results = [...counted].flatMap((heading) => {
    const key = { sheet, row, heading };
    const [before, after] = [base.get(measurementKey(key)), now.get(measurementKey(key))];
    const either = after ?? before;
    const change = Number(after?.value ?? 0) - Number(before?.value ?? 0);
    return either?.kind === "result" ? [{ heading, unit: either.unit, change }] : [];
  });
  const isCount = (heading: string, unit: string, change: number): boolean =>
    unit === "" && COUNTED.test(heading) && Number.isInteger(change) && change !== 0;
  return {
    row: { sheet, row },
    what,
    counts: results.flatMap(({ heading, unit, change }) =>
      isCount(heading, unit, change) ? [countChangeText(change, headingText({ heading }))] : [],
    ),
    lengths: results.flatMap(({ heading, unit, change }) =>
      unit === "ft" && itemKey(heading) === itemKey(item) ? lengthChangeText(change, item) : [],
    ),
  };
};

const withResults = (what: string, results: readonly string[]): string =>
  results.length === 0 ? what : `${what}: ${results.join(", ")}`;

/** Each row that changed with what came of it; where that isn't counted row by row, what came of all of them. */
const rowsWithResults = (
  rows: readonly RowChange[],
  change: number,
  { unit }: ReadLine,
  isOwn: (row: RowChange["row"]) => boolean,
): string[] => {
  const sum = change === 0 ? [] : [countChangeText(change, unit)];
  if (rows.length === 1)
    return rows.map(({ what, counts, lengths }) =>
      withResults(what, [...lengths, ...(counts.length === 0 ? sum : counts)]),
    );
  // What was typed into the item's own line, such as its waste, says itself what it does.
  const isUncounted = rows.some(({ row, counts }) => counts.length === 0 && !isOwn(row));
  return [
    ...rows.map(({ what, counts, lengths }) => withResults(what, [...lengths, ...counts])),
    ...(isUncounted ? sum.map((words) => `these changes together: ${words}`) : []),
  ];
};

/** Inputs of rows that the workbook doesn't have any more: runs of its edge, and columns that the item is worked out from. */
const goneInputs = (
  scope: OrderComparison,
  item: string,
  reached: readonly MeasurementKey[],
): MeasurementKey[] => {
  const { order, base, now } = scope;
  const follows = edgeFollowedBy(scope, item);
  const edgeOf = (key: MeasurementKey): Measurement["value"] | undefined =>
    base.get(measurementKey({ ...key, heading: EDGE }))?.value;
  const isRunOfItem = (key: MeasurementKey): boolean => follows !== undefined && edgeOf(key) === follows;
  const isRunOfOther = (key: MeasurementKey): boolean =>
    follows !== undefined && edgeOf(key) !== undefined && edgeOf(key) !== follows;
  const columns = new Set(reached.map(({ sheet, heading }) => `${sheet}\n${heading}`));
  const rows = new Set(reached.map(({ sheet, row }) => `${sheet}\n${row}`));
  // Where a column has a row of the item's own, as that of a trim, its other rows are other items.
  const ofItem = new Set(
    reached.flatMap(({ sheet, row, heading }) =>
      itemKey(row) === itemKey(item) ? [`${sheet}\n${heading}`] : [],
    ),
  );
  const isOfColumn = ({ sheet, heading }: MeasurementKey): boolean =>
    columns.has(`${sheet}\n${heading}`) && !ofItem.has(`${sheet}\n${heading}`);
  return [...base.values()].filter(
    (measurement) =>
      isInput(measurement) &&
      measurement.heading !== "" &&
      // A line of the order is an item of its own.
      measurement.sheet !== order &&
      (isRunOfItem(measurement) || isOfColumn(measurement)) &&
      !isRunOfOther(measurement) &&
      !rows.has(`${measurement.sheet}\n${measurement.row}`) &&
      !now.has(measurementKey(measurement)),
  );
};

/** What differs between the two sides among some measurements, as far as it was typed. */
const changedAmong = ({ base, now }: OrderComparison, keys: readonly MeasurementKey[]): MeasurementKey[] =>
  keys.filter((key) => {
    const [before, after] = [base.get(measurementKey(key)), now.get(measurementKey(key))];
    return (isInput(before) || isInput(after)) && differ(before, after);
  });

/** Changes row by row. */
const byRow = (keys: readonly MeasurementKey[]): MeasurementKey[][] => {
  const rows = new Map<string, MeasurementKey[]>();
  for (const key of keys) rows.set(rowKey(key), [...(rows.get(rowKey(key)) ?? []), key]);
  return [...rows.values()];
};

const calledOtherwise = (former: string, now: string): string => `${former} is called ${now} now`;

/** `South is called Back now`: a name is a change, though it moves nothing by itself. */
const renamedInWords = (
  { formerNames, renamed }: OrderComparison,
  reached: readonly MeasurementKey[],
): string[] => [
  ...new Set(
    reached.flatMap((key) => {
      const former = formerNames.get(rowKey(key));
      return former === undefined || renamed.has(itemKey(key.row)) ? [] : [calledOtherwise(former, key.row)];
    }),
  ),
];

const lineCells = (live: ReadOrder, row: number, columns: readonly OrderColumn[]): SheetCellAddress[] =>
  columns.flatMap((column) => {
    const at = live.columns[column];
    return at === undefined ? [] : [{ sheet: live.sheet, row, column: at }];
  });

const quantityCauses = (
  scope: OrderComparison,
  live: ReadOrder,
  item: ReadLine,
  row: number,
  change: number,
): string[] => {
  const { contents } = scope;
  const from = lineCells(live, row, ["needed", "toOrder"]);
  const isOtherRun = isRunOfOtherEdge(scope, item.item);
  const otherLines = new Set(live.lines.map((line) => line.row).filter((line) => line !== row));
  const isOtherLine = (cell: SheetCellAddress): boolean =>
    cell.sheet === live.sheet && otherLines.has(cell.row);
  const reached = labelsOfCells(contents, allPrecedents(contents, from, isOtherRun));
  // What only another line of the order counts isn't counted here: panels are no nails.
  const ownCells = allPrecedents(contents, from, (cell) => isOtherRun(cell) || isOtherLine(cell));
  const own = labelsOfCells(contents, ownCells);
  const changed = changedAmong(scope, [...reached, ...goneInputs(scope, item.item, reached)]).filter(
    (key) => !NOT_OF_QUANTITY.test(`${key.row} ${key.heading}`),
  );
  const renamed = renamedInWords(scope, reached);
  if (changed.length === 0)
    return [...renamed, "no input that can be followed has changed: was a formula typed over?"];
  const rows = byRow(changed).map((keys) => rowInWords(scope, keys, own, item.item));
  const runs = runFeetByRow(scope, item.item, ownCells, new Set(changed.map(rowKey)));
  const follows = String(edgeFollowedBy(scope, item.item));
  const withRuns = rows.map((each) => ({
    ...each,
    lengths: [...each.lengths, ...lengthChangeText(runs.get(rowKey(each.row)) ?? 0, follows)],
  }));
  const isOwn = ({ sheet, row: name }: RowChange["row"]): boolean =>
    sheet === live.sheet && itemKey(name) === itemKey(item.item);
  return [...renamed, ...rowsWithResults(rows.length === 1 ? rows : withRuns, change, item, isOwn)];
};

const priceCauses = (scope: OrderComparison, live: ReadOrder, row: number): string[] => {
  const reached = labelsOfCells(
    scope.contents,
    allPrecedents(scope.contents, lineCells(live, row, ["price"])),
  );
  return byRow(changedAmong(scope, reached)).map((keys) => rowInWords(scope, keys, [], "").what);
};

/** Why an item isn't on the order any more: it was taken off the sheet that lists it, or its line was. */
const goneInWords = ({ order, base, now }: OrderComparison, item: string): string[] => {
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
  return (left.length === 0 ? [order] : left).map((sheet) => `${item} is gone from "${sheet}"`);
};

const unitNamed = ({ unit }: ReadLine): string => (unit.trim() === "" ? "no unit" : unit);

/** That an item is measured in another unit, where both sides need some: their numbers aren't to be compared. */
const unitInWords = (old: ReadLine | undefined, current: ReadLine | undefined): string[] =>
  old?.needed && current?.needed && itemKey(old.unit) !== itemKey(current.unit)
    ? [`measured in ${unitNamed(current)} now, in ${unitNamed(old)} before`]
    : [];

/**
 * Why each changed quantity and price moved: the inputs behind it that differ between the two sides, followed through the formulas
 * of the order that lives in the workbook. Values are those of the two sides, found by their names.
 */
export const causesOfChanges = (
  contents: Contents,
  live: LiveOrder,
  base: ComparedOrder,
  now: ComparedOrder,
  renamed: RenamedItems,
): ItemCauses[] => {
  const { order } = live;
  const liveNames = itemNames(now.order, order);
  const underLiveNames = matchNames(now.measurements, live.measurements, order.sheet, liveNames).earlier;
  const { earlier, later, formerNames } = matchNames(
    base.measurements,
    underLiveNames,
    order.sheet,
    itemNames(base.order, now.order),
  );
  const known = (side: ComparedOrder, measurements: readonly Measurement[]): MeasurementsByKey =>
    byKey([...orderedOn(order.sheet, side.order), ...measurements]);
  const scope: OrderComparison = {
    contents,
    order: order.sheet,
    base: known(base, earlier),
    now: known(now, later),
    formerNames,
    renamed,
  };
  const lines = (side: ComparedOrder): ReadonlyMap<string, ReadLine> =>
    new Map(side.order.lines.map((line) => [itemKey(line.item), line]));
  const [then, after, alive] = [lines(base), lines(now), lines({ ...now, order })];
  const goesOn = new Set([...renamed.values()].map((former) => itemKey(former.item)));
  const listed = [...then.keys()].filter((key) => !goesOn.has(key));
  return [...new Set([...listed, ...after.keys()])].flatMap((key): ItemCauses[] => {
    const former = renamed.get(key);
    const [old, current] = [former ?? then.get(key), after.get(key)];
    const line = current ?? old;
    const remeasured = unitInWords(old, current);
    const needed = (current?.needed ?? 0) - (old?.needed ?? 0);
    const ordered = (current?.toOrder ?? 0) - (old?.toOrder ?? 0);
    const hasMoved = needed !== 0 || ordered !== 0 || remeasured.length > 0;
    const isRepriced = old !== undefined && current !== undefined && old.price !== current.price;
    const row = alive.get(key)?.row;
    if (!line || (!hasMoved && !isRepriced && !former)) return [];
    if (row === undefined)
      return [
        {
          item: line.item,
          sentences: goneInWords(scope, line.item),
        },
      ];
    const sentences = [
      ...(former ? [calledOtherwise(former.item, line.item)] : []),
      ...remeasured,
      ...(hasMoved ? quantityCauses(scope, order, line, row, remeasured.length === 0 ? needed : 0) : []),
      ...(isRepriced ? priceCauses(scope, order, row) : []),
    ];
    return sentences.length === 0 ? [] : [{ item: line.item, sentences: [...new Set(sentences)] }];
  });
};
