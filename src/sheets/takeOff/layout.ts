import type { TakeOffOptions } from "./options";

const FEWEST_PLANE_ROWS = 4;
const SPARE_PLANE_ROWS = 2;
const RIDGE_ROWS = 3;
/** Room for the starters of the longest stagger pattern to spill into. */
const STARTER_ROWS = 25;

/** Where each part of the take-off stands: first rows, counted from 0. One place, so that the parts can't disagree. */
export interface TakeOffLayout {
  readonly planeRows: number;
  readonly ridgeRows: number;
  readonly planes: number;
  readonly planeTotal: number;
  readonly courses: number;
  readonly trim: number;
  readonly trimEnd: number;
  readonly trimTotals: number;
  readonly order: number;
  readonly starters: number;
  readonly cautions: number;
}

/** Rows of section title and headings above a section's first row. */
export const HEAD_ROWS = 2;
const GAP = 1;
export const TRIM_KINDS = ["eave", "gable", "ridge"] as const;
/** Lines of the order; a test sees to it that the parts of the sheet stay apart. */
const ORDER_LINES = 7;

export const layOutTakeOff = ({ planes: { length }, notes, ridges }: TakeOffOptions): TakeOffLayout => {
  const planeRows = Math.max(FEWEST_PLANE_ROWS, length + SPARE_PLANE_ROWS);
  const ridgeRows = Math.max(RIDGE_ROWS, ridges.length);
  const planes = 3 + notes.length + HEAD_ROWS;
  const planeTotal = planes + planeRows;
  const courses = planeTotal + 1 + GAP + HEAD_ROWS;
  const trim = courses + planeRows + GAP + HEAD_ROWS;
  const trimEnd = trim + 2 * planeRows + ridgeRows;
  const order = trimEnd + TRIM_KINDS.length + GAP + HEAD_ROWS;
  const starters = order + ORDER_LINES + GAP + HEAD_ROWS + 1;
  return {
    planeRows,
    ridgeRows,
    planes,
    planeTotal,
    courses,
    trim,
    trimEnd,
    trimTotals: trimEnd,
    order,
    starters,
    cautions: starters + STARTER_ROWS,
  };
};
