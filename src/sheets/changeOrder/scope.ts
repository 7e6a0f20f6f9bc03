import type { Contents } from "../../workbook/contents";
import { labelsIn, measureKey, type Measure, type MeasureKey } from "../trace/measureLabels";
import type { SheetCellAddress } from "../../workbook/address";
import type { Renamed } from "./sides";

/** Measures by their keys. */
export type Known = ReadonlyMap<string, Measure>;

/** What is known where two orders are compared: the workbook as it stands, and the measures of both under the names of now. */
export interface Scope {
  readonly contents: Contents;
  /** The sheet of the order itself. */
  readonly order: string;
  readonly base: Known;
  readonly now: Known;
  readonly formerNames: ReadonlyMap<string, string>;
  /** Items that are called otherwise: their own lines say so. */
  readonly renamed: Renamed;
}

/** Distinct labels of cells, in the workbook's order. */
export const labelsOfSpots = (contents: Contents, spots: readonly SheetCellAddress[]): MeasureKey[] => {
  const labelsFor = labelsIn(contents);
  const order = [...contents.sheets.keys()];
  const sorted = [...spots].sort(
    (a, b) => order.indexOf(a.sheet) - order.indexOf(b.sheet) || a.row - b.row || a.column - b.column,
  );
  const keys = new Map<string, MeasureKey>();
  for (const spot of sorted) {
    const label = labelsFor(spot.sheet)?.at(spot);
    if (label) keys.set(measureKey(label), label);
  }
  return [...keys.values()];
};
