import { cellInView, type SheetInView } from "../inView";
import { PLANE, PLANE_HEADINGS, ROOF_PLANE, ROOF_SHAPE } from "./planes";

const isText = (value: unknown): value is string => typeof value === "string" && value.trim() !== "";

/** The first row of the plane table on a sheet, or undefined where there is none. */
const firstPlaneRow = ({ cells }: SheetInView): number | undefined => {
  const headings = cells.findIndex((row) =>
    PLANE_HEADINGS.every((heading, column) => row[column] === heading),
  );
  return headings < 0 ? undefined : headings + 1;
};

/**
 * The row of the plane that a person means on a take-off: the one selected, the one whose name stands in the selected
 * row, or the first. undefined where the sheet is no take-off, or has no plane yet.
 */
export const planeRowInView = (view: SheetInView): number | undefined => {
  const first = firstPlaneRow(view);
  if (first === undefined) return undefined;
  const rows: number[] = [];
  for (let row = first; isText(cellInView(view, { row, column: PLANE.name })); row++) {
    if (cellInView(view, { row, column: PLANE.shape }) === null) break;
    rows.push(row);
  }
  const { row: selected } = view.selected;
  const named = cellInView(view, { row: selected, column: PLANE.name });
  return (
    rows.find((row) => row === selected) ??
    rows.find((row) => cellInView(view, { row, column: PLANE.name }) === named) ??
    rows[0]
  );
};

/** The number of a row's plane in the roof, where the row comes from a footprint. */
export const roofPlaneNumber = (view: SheetInView, row: number): number | undefined => {
  if (cellInView(view, { row, column: PLANE.shape }) !== ROOF_SHAPE) return undefined;
  const name = cellInView(view, { row, column: PLANE.name });
  return typeof name === "string" ? Number(name.slice(ROOF_PLANE.length)) : undefined;
};
