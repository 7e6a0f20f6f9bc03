import { itemKey } from "../../../shared/kinds/orderLines";
import { labelsIn, measurementKey, type Measurement, type MeasurementKey } from "../trace/measurements";
import type { SheetCellAddress } from "../../workbook/address";
import { allPrecedents } from "../trace/precedents";
import { parsedValue } from "./measurementText";
import { rowKey } from "./nameMatching";
import { labelsOfCells, type MeasurementsByKey, type OrderComparison } from "./orderComparison";

/** The takeoff's own words for a run and what follows it: a trim is worked out from the runs of its own edge alone. */
export const [EDGE, LENGTH, FOLLOWS] = ["Edge", "Length", "Follows"];

/** The edge that a trim follows; undefined for what is no trim. */
export const edgeFollowedBy = (
  { base, now }: Pick<OrderComparison, "base" | "now">,
  item: string,
): Measurement["value"] | undefined =>
  [...now.values(), ...base.values()].find(
    ({ row, heading }) => itemKey(row) === itemKey(item) && heading === FOLLOWS,
  )?.value;

/** Passes over runs of another edge than an item follows, and what only they are worked out from. */
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
    // A run of no edge yet is no trim's.
    return !edges.includes(follows);
  };
};

/** Less than anyone can measurement on a roof, in feet. */
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
 * By how many feet each of some changed rows makes the runs longer that a trim follows; nothing where a run hangs on several of
 * them, or they don't come to all that the runs have gained.
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
  const gained = (key: MeasurementKey): number =>
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
