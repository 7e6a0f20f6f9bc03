import type { Contents } from "../../workbook/contents";
import { labelsIn, measurementKey, type Measurement, type MeasurementKey } from "../trace/measurements";
import type { SheetCellAddress } from "../../workbook/address";
import type { RenamedItems } from "./comparedOrders";

/** Measures by their keys. */
export type MeasurementsByKey = ReadonlyMap<string, Measurement>;

/** What is known where two orders are compared: the workbook as it stands, and the measurements of both under the names of now. */
export interface OrderComparison {
  readonly contents: Contents;
  /** The sheet of the order itself. */
  readonly order: string;
  readonly base: MeasurementsByKey;
  readonly now: MeasurementsByKey;
  readonly formerNames: ReadonlyMap<string, string>;
  /** Items that are called otherwise: their own lines say so. */
  readonly renamed: RenamedItems;
}

/** Distinct labels of cells, in the workbook's order. */
export const labelsOfCells = (contents: Contents, cells: readonly SheetCellAddress[]): MeasurementKey[] => {
  const labelsFor = labelsIn(contents);
  const order = [...contents.sheets.keys()];
  const sorted = [...cells].sort(
    (a, b) => order.indexOf(a.sheet) - order.indexOf(b.sheet) || a.row - b.row || a.column - b.column,
  );
  const keys = new Map<string, MeasurementKey>();
  for (const cell of sorted) {
    const label = labelsFor(cell.sheet)?.at(cell);
    if (label) keys.set(measurementKey(label), label);
  }
  return [...keys.values()];
};
