import { itemKey } from "../../../shared/kinds/orderLines";
import type { CellLabel } from "../trace/cellLabels";
import { measurementKey, type Measurement } from "../trace/measurements";
import { parsedValue } from "./measurementText";
import { rowKey } from "./nameMatching";
import type { OrderComparison } from "./orderComparison";
import { EDGE, edgeFollowedBy } from "./trimRuns";

export const isInput = (measurement: Measurement | undefined): boolean => measurement?.kind === "input";

/** A value typed in another way, such as 1 ft for 12 in, is the same. */
const differ = (a: Measurement | undefined, b: Measurement | undefined): boolean =>
  (a && parsedValue(a)) !== (b && parsedValue(b));

/** The inputs among some cells whose values differ between the two orders. */
export const changedInputs = ({ base, now }: OrderComparison, labels: readonly CellLabel[]): CellLabel[] =>
  labels.filter((key) => {
    const [before, after] = [base.get(measurementKey(key)), now.get(measurementKey(key))];
    return (isInput(before) || isInput(after)) && differ(before, after);
  });

export const groupedByRow = (labels: readonly CellLabel[]): CellLabel[][] => {
  const rows = new Map<string, CellLabel[]>();
  for (const key of labels) rows.set(rowKey(key), [...(rows.get(rowKey(key)) ?? []), key]);
  return [...rows.values()];
};

/** Inputs of deleted rows that the item depended on: runs of its edge, and rows in the columns that it is calculated from. */
export const deletedInputs = (
  comparison: OrderComparison,
  item: string,
  precedents: readonly CellLabel[],
): CellLabel[] => {
  const { order, base, now } = comparison;
  const follows = edgeFollowedBy(comparison, item);
  const edgeOf = (key: CellLabel): Measurement["value"] | undefined =>
    base.get(measurementKey({ ...key, heading: EDGE }))?.value;
  const isRunOfItem = (key: CellLabel): boolean => follows !== undefined && edgeOf(key) === follows;
  const isRunOfOther = (key: CellLabel): boolean =>
    follows !== undefined && edgeOf(key) !== undefined && edgeOf(key) !== follows;
  const columns = new Set(precedents.map(({ sheet, heading }) => `${sheet}\n${heading}`));
  const rows = new Set(precedents.map(({ sheet, row }) => `${sheet}\n${row}`));
  // In a column with a row for the item itself, such as a trim's, the other rows are other items.
  const ofItem = new Set(
    precedents.flatMap(({ sheet, row, heading }) =>
      itemKey(row) === itemKey(item) ? [`${sheet}\n${heading}`] : [],
    ),
  );
  const isOfColumn = ({ sheet, heading }: CellLabel): boolean =>
    columns.has(`${sheet}\n${heading}`) && !ofItem.has(`${sheet}\n${heading}`);
  return [...base.values()].filter(
    (measurement) =>
      isInput(measurement) &&
      measurement.heading !== "" &&
      // Each line of the order is an item of its own.
      measurement.sheet !== order &&
      (isRunOfItem(measurement) || isOfColumn(measurement)) &&
      !isRunOfOther(measurement) &&
      !rows.has(`${measurement.sheet}\n${measurement.row}`) &&
      !now.has(measurementKey(measurement)),
  );
};
