import { itemKey } from "../../../shared/kinds/orderLines";
import { labelsIn, measureKey, type Measure, type MeasureKey } from "../trace/measureLabels";
import type { SheetCellAddress } from "../../workbook/address";
import { traceBack } from "../trace/trace";
import { valueAsRead } from "./measureWords";
import { rowKey } from "./sameNames";
import { labelsOfSpots, type Known, type Scope } from "./scope";

/** The takeoff's own words for a run and what follows it: a trim is worked out from the runs of its own edge alone. */
export const [EDGE, LENGTH, FOLLOWS] = ["Edge", "Length", "Follows"];

/** The edge that a trim follows; undefined for what is no trim. */
export const followedBy = (
  { base, now }: Pick<Scope, "base" | "now">,
  item: string,
): Measure["value"] | undefined =>
  [...now.values(), ...base.values()].find(
    ({ row, heading }) => itemKey(row) === itemKey(item) && heading === FOLLOWS,
  )?.value;

/** Passes over runs of another edge than an item follows, and what only they are worked out from. */
export const otherRuns = (
  { contents, base, now }: Scope,
  item: string,
): ((spot: SheetCellAddress) => boolean) => {
  const labelsFor = labelsIn(contents);
  const follows = followedBy({ base, now }, item);
  return (spot) => {
    if (follows === undefined) return false;
    const label = labelsFor(spot.sheet)?.at(spot);
    if (label?.heading !== LENGTH) return false;
    const edgeKey = measureKey({ ...label, heading: EDGE });
    const edges = [base.get(edgeKey)?.value, now.get(edgeKey)?.value].filter((edge) => edge !== undefined);
    // A run of no edge yet is no trim's.
    return !edges.includes(follows);
  };
};

/** Feet that nobody measures. */
const NOTHING_FT = 1e-6;

const feetOf = (measure: Measure | undefined): number =>
  Number(measure === undefined ? 0 : valueAsRead(measure));

const lengthFollowed = (known: Known, follows: Measure["value"]): number =>
  [...known.values()]
    .filter(
      (measure) =>
        measure.heading === LENGTH && known.get(measureKey({ ...measure, heading: EDGE }))?.value === follows,
    )
    .reduce((sum, measure) => sum + feetOf(measure), 0);

/**
 * By how many feet each of some changed rows makes the runs longer that a trim follows; nothing where a run hangs on several of
 * them, or they don't come to all that the runs have gained.
 */
export const runsByRow = (
  { contents, base, now }: Scope,
  item: string,
  reached: readonly SheetCellAddress[],
  changedRows: ReadonlySet<string>,
): ReadonlyMap<string, number> => {
  const none = new Map<string, number>();
  const follows = followedBy({ base, now }, item);
  if (follows === undefined) return none;
  const labelsFor = labelsIn(contents);
  const gained = (key: MeasureKey): number =>
    feetOf(now.get(measureKey(key))) - feetOf(base.get(measureKey(key)));
  const byRow = new Map<string, number>();
  for (const spot of reached) {
    const label = labelsFor(spot.sheet)?.at(spot);
    if (label?.heading !== LENGTH || gained(label) === 0) continue;
    const behind = labelsOfSpots(contents, traceBack(contents, [spot])).map(rowKey);
    const [row, ...others] = new Set(behind.filter((key) => changedRows.has(key)));
    if (row === undefined || others.length > 0) return none;
    byRow.set(row, (byRow.get(row) ?? 0) + gained(label));
  }
  const all = lengthFollowed(now, follows) - lengthFollowed(base, follows);
  const told = [...byRow.values()].reduce((sum, feet) => sum + feet, 0);
  return Math.abs(all - told) < NOTHING_FT ? byRow : none;
};
