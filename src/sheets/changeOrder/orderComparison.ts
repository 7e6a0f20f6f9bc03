import type { SheetCellAddress } from "../../workbook/address";
import type { Contents } from "../../workbook/contents";
import { ORDER, ORDER_HEADINGS } from "../orderSheet/orderLayout";
import type { ReadOrder } from "../orderSheet/readOrder";
import type { LiveOrder } from "../signedOrder/freezeOrder";
import { labelsIn, type CellLabel } from "../trace/cellLabels";
import { measurementKey, type Measurement } from "../trace/measurements";
import type { ComparedOrder, RenamedItems } from "./comparedOrders";
import { matchNames } from "./nameMatching";
import { itemNames } from "./renamedItems";

export type MeasurementsByKey = ReadonlyMap<string, Measurement>;

/** Two orders with their measurements under the names that the workbook has now. */
export interface OrderComparison {
  readonly contents: Contents;
  /** The sheet of the live order. */
  readonly order: string;
  readonly base: MeasurementsByKey;
  readonly now: MeasurementsByKey;
  /** Former names of renamed rows, by `rowKey`. */
  readonly formerNames: ReadonlyMap<string, string>;
  readonly renamed: RenamedItems;
}

/** The figures of an order's own lines as measurements. */
const lineMeasurements = (sheet: string, { lines }: ReadOrder): Measurement[] =>
  lines.flatMap(({ item, ...line }) =>
    (["needed", "toOrder", "price"] as const).flatMap((column): Measurement[] => {
      const value = line[column];
      const heading = ORDER_HEADINGS[ORDER[column]] ?? "";
      return value === null ? [] : [{ sheet, row: item, heading, unit: "", value, kind: "result" }];
    }),
  );

/** Compares the measurements of two orders; rows and sheets that were renamed are matched by what they hold. */
export const compareOrders = (
  contents: Contents,
  { order, measurements }: LiveOrder,
  base: ComparedOrder,
  now: ComparedOrder,
  renamed: RenamedItems,
): OrderComparison => {
  const liveNames = itemNames(now.order, order);
  const underLiveNames = matchNames(now.measurements, measurements, order.sheet, liveNames).earlier;
  const { earlier, later, formerNames } = matchNames(
    base.measurements,
    underLiveNames,
    order.sheet,
    itemNames(base.order, now.order),
  );
  const byKey = (compared: ComparedOrder, renamedTo: readonly Measurement[]): MeasurementsByKey =>
    new Map(
      [...lineMeasurements(order.sheet, compared.order), ...renamedTo].map((measurement) => [
        measurementKey(measurement),
        measurement,
      ]),
    );
  return {
    contents,
    order: order.sheet,
    base: byKey(base, earlier),
    now: byKey(now, later),
    formerNames,
    renamed,
  };
};

/** Distinct labels of cells, in the workbook's order. */
export const labelsOfCells = (contents: Contents, cells: readonly SheetCellAddress[]): CellLabel[] => {
  const labelsFor = labelsIn(contents);
  const order = [...contents.sheets.keys()];
  const sorted = [...cells].sort(
    (a, b) => order.indexOf(a.sheet) - order.indexOf(b.sheet) || a.row - b.row || a.column - b.column,
  );
  const labels = new Map<string, CellLabel>();
  for (const cell of sorted) {
    const label = labelsFor(cell.sheet)?.at(cell);
    if (label) labels.set(measurementKey(label), label);
  }
  return [...labels.values()];
};
