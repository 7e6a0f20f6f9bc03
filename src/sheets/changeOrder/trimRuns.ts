import { itemKey } from "../../../shared/kinds/orderLines";
import { labelsIn, type CellLabel } from "../trace/cellLabels";
import { measurementKey, type Measurement } from "../trace/measurements";
import type { SheetCellAddress } from "../../workbook/address";
import { allPrecedents } from "../trace/precedents";
import { parsedValue } from "./measurementText";
import { rowKey } from "./nameMatching";
import { labelsOfCells, type MeasurementsByKey, type OrderComparison } from "./orderComparison";

/** The takeoff's headings of runs and trims: a trim is calculated only from the runs of the edge that it follows. */
export const [EDGE, LENGTH, FOLLOWS] = ["Edge", "Length", "Follows"];

/** The edge that a trim follows; undefined for an item that isn't a trim. */
export const edgeFollowedBy = (
  { base, now }: Pick<OrderComparison, "base" | "now">,
  item: string,
): Measurement["value"] | undefined =>
  [...now.values(), ...base.values()].find(
    ({ row, heading }) => itemKey(row) === itemKey(item) && heading === FOLLOWS,
  )?.value;

/** Skips the runs of edges that an item doesn't follow, with the cells behind them. */
export const isRunOfOtherEdge = (
  { contents, base, now }: OrderComparison,
  item: string,
): ((cell: SheetCellAddress) => boolean) => {
  const labelsFor = labelsIn(contents);
  const follows = edgeFollowedBy({ base, now }, item);
  return (cell) => {
    if (follows === undefined) return false;
    const label = labelsFor(cell.sheet)?.at(cell);
    if (label?.heading !== LENGTH) return false;
    const edgeKey = measurementKey({ ...label, heading: EDGE });
    const edges = [base.get(edgeKey)?.value, now.get(edgeKey)?.value].filter((edge) => edge !== undefined);
    // A run without an edge belongs to no trim.
    return !edges.includes(follows);
  };
};

/** Less than anyone can measure on a roof, in feet. */
const NOTHING_FT = 1e-6;

const feetOf = (measurement: Measurement | undefined): number =>
  Number(measurement === undefined ? 0 : parsedValue(measurement));

const lengthFollowed = (known: MeasurementsByKey, follows: Measurement["value"]): number =>
  [...known.values()]
    .filter(
      (measurement) =>
        measurement.heading === LENGTH &&
        known.get(measurementKey({ ...measurement, heading: EDGE }))?.value === follows,
    )
    .reduce((sum, measurement) => sum + feetOf(measurement), 0);

/**
 * By how many feet each changed row lengthens the runs that a trim follows. Empty where a run depends on several changed rows, or
 * where the rows don't account for the whole change.
 */
export const runFeetByRow = (
  { contents, base, now }: OrderComparison,
  item: string,
  reached: readonly SheetCellAddress[],
  changedRows: ReadonlySet<string>,
): ReadonlyMap<string, number> => {
  const none = new Map<string, number>();
  const follows = edgeFollowedBy({ base, now }, item);
  if (follows === undefined) return none;
  const labelsFor = labelsIn(contents);
  const gained = (key: CellLabel): number =>
    feetOf(now.get(measurementKey(key))) - feetOf(base.get(measurementKey(key)));
  const byRow = new Map<string, number>();
  for (const cell of reached) {
    const label = labelsFor(cell.sheet)?.at(cell);
    if (label?.heading !== LENGTH || gained(label) === 0) continue;
    const behind = labelsOfCells(contents, allPrecedents(contents, [cell])).map(rowKey);
    const [row, ...others] = new Set(behind.filter((key) => changedRows.has(key)));
    if (row === undefined || others.length > 0) return none;
    byRow.set(row, (byRow.get(row) ?? 0) + gained(label));
  }
  const all = lengthFollowed(now, follows) - lengthFollowed(base, follows);
  const told = [...byRow.values()].reduce((sum, feet) => sum + feet, 0);
  return Math.abs(all - told) < NOTHING_FT ? byRow : none;
};
