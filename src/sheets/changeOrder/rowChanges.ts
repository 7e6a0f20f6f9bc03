import { itemKey } from "../../../shared/kinds/orderLines";
import type { ReadLine } from "../orderSheet/readOrder";
import type { CellLabel } from "../trace/cellLabels";
import { measurementKey, type Measurement } from "../trace/measurements";
import { isInput } from "./changedInputs";
import { countChangeText, headingText, lengthChangeText, valueText } from "./measurementText";
import type { MeasurementsByKey, OrderComparison } from "./orderComparison";
import { EDGE } from "./trimRuns";

/** Where panels laid change, the courses are shown too. */
const [PANELS_LAID, COURSES] = ["Panels, laid", "Courses"];

/** Headings of counts are plural: `Courses`, `Stock lengths`. */
const COUNTED = /s\b/i;

/** `slope length 18' 0" to 19' 6"`. */
const changeText = (key: CellLabel, base: Measurement | undefined, now: Measurement | undefined): string => {
  const made = base?.kind === "result" && now?.kind === "input" ? ", typed over the formula" : "";
  return `${headingText(key)} ${valueText(base)} to ${valueText(now)}${made}`.trim();
};

/** A run without a name is named by its edge: `hip, row 54`. */
const rowName = (base: MeasurementsByKey, now: MeasurementsByKey, sheet: string, row: string): string => {
  const edgeKey = measurementKey({ sheet, row, heading: EDGE });
  const edge = (now.get(edgeKey) ?? base.get(edgeKey))?.value;
  return edge !== undefined && /^row \d+$/.test(row) ? `${edge}, ${row},` : row;
};

/** What changed in one row, and the results of the same row: counts, and lengths of the item itself. */
export interface RowChange {
  readonly row: Pick<CellLabel, "sheet" | "row">;
  readonly text: string;
  readonly counts: readonly string[];
  readonly lengths: readonly string[];
}

export const rowChange = (
  { order, base, now }: OrderComparison,
  keys: readonly CellLabel[],
  own: readonly CellLabel[],
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
  const name = rowName(base, now, sheet, row);
  const text = !isRowOf(base)
    ? `${name} is new: ${values(([, , after]) => after)}`
    : !isRowOf(now)
      ? `${name} was removed (${values(([, before]) => before)})`
      : `${name} ${pairs.map(([key, before, after]) => changeText(key, before, after)).join(", ")}`;
  const ofSheet = own.filter((key) => key.sheet === sheet);
  const ofRow = ofSheet.filter((key) => key.row === row);
  // A removed row had the same columns as the others.
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
    text,
    counts: results.flatMap(({ heading, unit, change }) =>
      isCount(heading, unit, change) ? [countChangeText(change, headingText({ heading }))] : [],
    ),
    lengths: results.flatMap(({ heading, unit, change }) =>
      unit === "ft" && itemKey(heading) === itemKey(item) ? lengthChangeText(change, item) : [],
    ),
  };
};

const withResults = (text: string, results: readonly string[]): string =>
  results.length === 0 ? text : `${text}: ${results.join(", ")}`;

/** Each changed row with its results; the total change of the item too, where not every row counts its own. */
export const rowChangeTexts = (
  rows: readonly RowChange[],
  change: number,
  { unit }: ReadLine,
  isOwn: (row: RowChange["row"]) => boolean,
): string[] => {
  const sum = change === 0 ? [] : [countChangeText(change, unit)];
  if (rows.length === 1)
    return rows.map(({ text, counts, lengths }) =>
      withResults(text, [...lengths, ...(counts.length === 0 ? sum : counts)]),
    );
  // An input in the item's own line, such as its waste, needs no result.
  const isUncounted = rows.some(({ row, counts }) => counts.length === 0 && !isOwn(row));
  return [
    ...rows.map(({ text, counts, lengths }) => withResults(text, [...lengths, ...counts])),
    ...(isUncounted ? sum.map((count) => `these changes together: ${count}`) : []),
  ];
};
