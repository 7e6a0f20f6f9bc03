import { itemKey } from "../../../shared/kinds/orderLines";
import type { Contents } from "../../workbook/contents";
import { ORDER, ORDER_HEADINGS, type OrderColumn } from "../orderSheet/orderLayout";
import type { ReadLine, ReadOrder } from "../orderSheet/readOrder";
import type { LiveOrder } from "../signedBase/freeze";
import { measureKey, type Measure, type MeasureKey } from "../trace/measureLabels";
import type { SheetCellAddress } from "../../workbook/address";
import { traceBack } from "../trace/trace";
import { countInWords, headingInWords, lengthsInWords, valueAsRead, valueInWords } from "./measureWords";
import { matchNames, rowKey } from "./sameNames";
import { itemNames } from "./renamed";
import { EDGE, followedBy, otherRuns, runsByRow } from "./whyRuns";
import { labelsOfSpots, type Known, type Scope } from "./scope";
import type { Renamed, Side } from "./sides";

/** Why the quantity or the price of an item moved, a sentence for each thing that did. */
export interface Why {
  readonly item: string;
  readonly sentences: readonly string[];
}

const byKey = (measures: readonly Measure[]): Known =>
  new Map(measures.map((measure) => [measureKey(measure), measure]));

/** Typed in another way it is the same still. */
const differ = (a: Measure | undefined, b: Measure | undefined): boolean =>
  (a && valueAsRead(a)) !== (b && valueAsRead(b));

/** No quantity is worked out from these, though a whole block that holds them is read. */
const NOT_OF_QUANTITY = /\b(?:price|weight|pallet)\b/i;

/** Beside the panels of a plane its courses tell what happened, though panels are placed one by one. */
const [PANELS_LAID, COURSES] = ["Panels, laid", "Courses"];

/** Headings of counts are plurals: `Courses`, `Stock lengths`. */
const COUNTED = /s\b/i;

/** What an order works out is no measure behind it: it stands in its lines. */
const orderedOn = (sheet: string, { lines }: ReadOrder): Measure[] =>
  lines.flatMap(({ item, ...line }) =>
    (["needed", "toOrder", "price"] as const).flatMap((column): Measure[] => {
      const value = line[column];
      const heading = ORDER_HEADINGS[ORDER[column]] ?? "";
      return value === null ? [] : [{ sheet, row: item, heading, unit: "", value, kind: "result" }];
    }),
  );

const isInput = (measure: Measure | undefined): boolean => measure?.kind === "input";

/** `slope length 18' 0" to 19' 6"`. */
const moveInWords = (key: MeasureKey, base: Measure | undefined, now: Measure | undefined): string => {
  const made = base?.kind === "result" && now?.kind === "input" ? ", typed over what was worked out" : "";
  return `${headingInWords(key)} ${valueInWords(base)} to ${valueInWords(now)}${made}`.trim();
};

/** A run that has no name goes by its edge: `hip, row 54`. */
const rowInFull = (base: Known, now: Known, sheet: string, row: string): string => {
  const edgeKey = measureKey({ sheet, row, heading: EDGE });
  const edge = (now.get(edgeKey) ?? base.get(edgeKey))?.value;
  return edge !== undefined && /^row \d+$/.test(row) ? `${edge}, ${row},` : row;
};

/** What changed in one row, and what came of it in that same row: things, and lengths of the item itself. */
interface RowChange {
  readonly row: Pick<MeasureKey, "sheet" | "row">;
  readonly what: string;
  readonly counts: readonly string[];
  readonly lengths: readonly string[];
}

const rowInWords = (
  { order, base, now }: Scope,
  keys: readonly MeasureKey[],
  own: readonly MeasureKey[],
  item: string,
): RowChange => {
  const [{ sheet, row } = { sheet: "", row: "" }] = keys;
  const pairs = keys.map((key) => [key, base.get(measureKey(key)), now.get(measureKey(key))] as const);
  const values = (of: (pair: (typeof pairs)[number]) => Measure | undefined): string =>
    pairs
      .flatMap((pair) => (of(pair) ? [`${headingInWords(pair[0])} ${valueInWords(of(pair))}`.trim()] : []))
      .join(", ");
  const isRowOf = (known: Known): boolean =>
    [...known.values()].some(
      (measure) =>
        (isInput(measure) || measure.sheet === order) && measure.row === row && measure.sheet === sheet,
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
    const [before, after] = [base.get(measureKey(key)), now.get(measureKey(key))];
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
      isCount(heading, unit, change) ? [countInWords(change, headingInWords({ heading }))] : [],
    ),
    lengths: results.flatMap(({ heading, unit, change }) =>
      unit === "ft" && itemKey(heading) === itemKey(item) ? lengthsInWords(change, item) : [],
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
  const sum = change === 0 ? [] : [countInWords(change, unit)];
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
const goneInputs = (scope: Scope, item: string, reached: readonly MeasureKey[]): MeasureKey[] => {
  const { order, base, now } = scope;
  const follows = followedBy(scope, item);
  const edgeOf = (key: MeasureKey): Measure["value"] | undefined =>
    base.get(measureKey({ ...key, heading: EDGE }))?.value;
  const isRunOfItem = (key: MeasureKey): boolean => follows !== undefined && edgeOf(key) === follows;
  const isRunOfOther = (key: MeasureKey): boolean =>
    follows !== undefined && edgeOf(key) !== undefined && edgeOf(key) !== follows;
  const columns = new Set(reached.map(({ sheet, heading }) => `${sheet}\n${heading}`));
  const rows = new Set(reached.map(({ sheet, row }) => `${sheet}\n${row}`));
  // Where a column has a row of the item's own, as that of a trim, its other rows are other items.
  const ofItem = new Set(
    reached.flatMap(({ sheet, row, heading }) =>
      itemKey(row) === itemKey(item) ? [`${sheet}\n${heading}`] : [],
    ),
  );
  const isOfColumn = ({ sheet, heading }: MeasureKey): boolean =>
    columns.has(`${sheet}\n${heading}`) && !ofItem.has(`${sheet}\n${heading}`);
  return [...base.values()].filter(
    (measure) =>
      isInput(measure) &&
      measure.heading !== "" &&
      // A line of the order is an item of its own.
      measure.sheet !== order &&
      (isRunOfItem(measure) || isOfColumn(measure)) &&
      !isRunOfOther(measure) &&
      !rows.has(`${measure.sheet}\n${measure.row}`) &&
      !now.has(measureKey(measure)),
  );
};

/** What differs between the two sides among some measures, as far as it was typed. */
const changedAmong = ({ base, now }: Scope, keys: readonly MeasureKey[]): MeasureKey[] =>
  keys.filter((key) => {
    const [before, after] = [base.get(measureKey(key)), now.get(measureKey(key))];
    return (isInput(before) || isInput(after)) && differ(before, after);
  });

/** Changes row by row. */
const byRow = (keys: readonly MeasureKey[]): MeasureKey[][] => {
  const rows = new Map<string, MeasureKey[]>();
  for (const key of keys) rows.set(rowKey(key), [...(rows.get(rowKey(key)) ?? []), key]);
  return [...rows.values()];
};

const calledOtherwise = (former: string, now: string): string => `${former} is called ${now} now`;

/** `South is called Back now`: a name is a change, though it moves nothing by itself. */
const renamedInWords = ({ formerNames, renamed }: Scope, reached: readonly MeasureKey[]): string[] => [
  ...new Set(
    reached.flatMap((key) => {
      const former = formerNames.get(rowKey(key));
      return former === undefined || renamed.has(itemKey(key.row)) ? [] : [calledOtherwise(former, key.row)];
    }),
  ),
];

const spotsOf = (live: ReadOrder, row: number, columns: readonly OrderColumn[]): SheetCellAddress[] =>
  columns.flatMap((column) => {
    const at = live.columns[column];
    return at === undefined ? [] : [{ sheet: live.sheet, row, column: at }];
  });

const whyQuantity = (
  scope: Scope,
  live: ReadOrder,
  item: ReadLine,
  row: number,
  change: number,
): string[] => {
  const { contents } = scope;
  const from = spotsOf(live, row, ["needed", "toOrder"]);
  const isOtherRun = otherRuns(scope, item.item);
  const otherLines = new Set(live.lines.map((line) => line.row).filter((line) => line !== row));
  const isOtherLine = (spot: SheetCellAddress): boolean =>
    spot.sheet === live.sheet && otherLines.has(spot.row);
  const reached = labelsOfSpots(contents, traceBack(contents, from, isOtherRun));
  // What only another line of the order counts isn't counted here: panels are no nails.
  const ownSpots = traceBack(contents, from, (spot) => isOtherRun(spot) || isOtherLine(spot));
  const own = labelsOfSpots(contents, ownSpots);
  const changed = changedAmong(scope, [...reached, ...goneInputs(scope, item.item, reached)]).filter(
    (key) => !NOT_OF_QUANTITY.test(`${key.row} ${key.heading}`),
  );
  const renamed = renamedInWords(scope, reached);
  if (changed.length === 0)
    return [...renamed, "no input that can be followed has changed: was a formula typed over?"];
  const rows = byRow(changed).map((keys) => rowInWords(scope, keys, own, item.item));
  const runs = runsByRow(scope, item.item, ownSpots, new Set(changed.map(rowKey)));
  const follows = String(followedBy(scope, item.item));
  const withRuns = rows.map((each) => ({
    ...each,
    lengths: [...each.lengths, ...lengthsInWords(runs.get(rowKey(each.row)) ?? 0, follows)],
  }));
  const isOwn = ({ sheet, row: name }: RowChange["row"]): boolean =>
    sheet === live.sheet && itemKey(name) === itemKey(item.item);
  return [...renamed, ...rowsWithResults(rows.length === 1 ? rows : withRuns, change, item, isOwn)];
};

const whyPrice = (scope: Scope, live: ReadOrder, row: number): string[] => {
  const reached = labelsOfSpots(scope.contents, traceBack(scope.contents, spotsOf(live, row, ["price"])));
  return byRow(changedAmong(scope, reached)).map((keys) => rowInWords(scope, keys, [], "").what);
};

/** Why an item isn't on the order any more: it was taken off the sheet that lists it, or its line was. */
const goneInWords = ({ order, base, now }: Scope, item: string): string[] => {
  const listing = (known: Known): Set<string> =>
    new Set(
      [...known.values()].flatMap((measure) =>
        isInput(measure) && measure.sheet !== order && itemKey(measure.row) === itemKey(item)
          ? [measure.sheet]
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
export const whyItMoved = (
  contents: Contents,
  live: LiveOrder,
  base: Side,
  now: Side,
  renamed: Renamed,
): Why[] => {
  const { order } = live;
  const liveNames = itemNames(now.order, order);
  const underLiveNames = matchNames(now.measures, live.measures, order.sheet, liveNames).earlier;
  const { earlier, later, formerNames } = matchNames(
    base.measures,
    underLiveNames,
    order.sheet,
    itemNames(base.order, now.order),
  );
  const known = (side: Side, measures: readonly Measure[]): Known =>
    byKey([...orderedOn(order.sheet, side.order), ...measures]);
  const scope: Scope = {
    contents,
    order: order.sheet,
    base: known(base, earlier),
    now: known(now, later),
    formerNames,
    renamed,
  };
  const lines = (side: Side): ReadonlyMap<string, ReadLine> =>
    new Map(side.order.lines.map((line) => [itemKey(line.item), line]));
  const [then, after, alive] = [lines(base), lines(now), lines({ ...now, order })];
  const goesOn = new Set([...renamed.values()].map((former) => itemKey(former.item)));
  const listed = [...then.keys()].filter((key) => !goesOn.has(key));
  return [...new Set([...listed, ...after.keys()])].flatMap((key): Why[] => {
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
      ...(hasMoved ? whyQuantity(scope, order, line, row, remeasured.length === 0 ? needed : 0) : []),
      ...(isRepriced ? whyPrice(scope, order, row) : []),
    ];
    return sentences.length === 0 ? [] : [{ item: line.item, sentences: [...new Set(sentences)] }];
  });
};
