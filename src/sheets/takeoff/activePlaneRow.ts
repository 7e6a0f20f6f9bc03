import type { Cell } from "../../../shared/cell";
import { valueAt } from "../../workbook/contents";
import type { ActiveSheet } from "../../workbook/activeSheet";
import { ALL_PLANES, numberOfRoofPlane, PLANE_COLUMNS, PLANE_HEADINGS, ROOF_SHAPE } from "./planeSection";

const isText = (value: unknown): value is string => typeof value === "string" && value.trim() !== "";

/** The first row of the plane table on a sheet; undefined if the sheet has none. */
const firstPlaneRow = ({ cells }: ActiveSheet): number | undefined => {
  const headings = cells.findIndex((row) =>
    PLANE_HEADINGS.every((heading, column) => row[column] === heading),
  );
  return headings < 0 ? undefined : headings + 1;
};

/**
 * The plane table's row for the active plane of a takeoff: the selected row; the plane named in the selected row of another
 * table; or the first plane. undefined if the sheet isn't a takeoff, has no plane yet, or a blank row of the table is selected:
 * showing the wrong plane would be worse than none.
 */
export const activePlaneRow = (view: ActiveSheet): number | undefined => {
  const first = firstPlaneRow(view);
  if (first === undefined) return undefined;
  const nameOf = (row: number): Cell => valueAt(view, { row, column: PLANE_COLUMNS.name });
  const end = view.cells.findIndex((row, index) => index >= first && row[PLANE_COLUMNS.name] === ALL_PLANES);
  const rows = Array.from({ length: Math.max(0, end - first) }, (_, index) => first + index).filter((row) =>
    isText(nameOf(row)),
  );
  const { row: selected } = view.selected;
  if (selected >= first && selected < end) return rows.find((row) => row === selected);
  return rows.find((row) => nameOf(row) === nameOf(selected)) ?? rows[0];
};

/** The number of a row's plane in the roof; undefined if the plane is measured by hand. */
export const roofPlaneNumber = (view: ActiveSheet, row: number): number | undefined => {
  if (valueAt(view, { row, column: PLANE_COLUMNS.shape }) !== ROOF_SHAPE) return undefined;
  const name = valueAt(view, { row, column: PLANE_COLUMNS.name });
  return typeof name === "string" ? numberOfRoofPlane(name) : undefined;
};
