import { layOutRoof } from "../roofSheet/layout";
import { TYPED_KINDS, type TakeOffOptions, type TypedKind } from "./options";

const FEWEST_PLANE_ROWS = 4;
const SPARE_PLANE_ROWS = 2;
const FEWEST_TYPED_ROWS = 2;
/** Room for the starters of the longest stagger pattern to spill into. */
const STARTER_ROWS = 25;

/** Kinds of trim, in the order of their rows. Those of the planes come first, then those that are typed. */
export const RUN_KINDS = ["eave", "gable", "ridge", "hip", "valley", "pitch break"] as const;
export type RunKind = (typeof RUN_KINDS)[number];

/** Where each part of the take-off stands: first rows, counted from 0. One place, so that the parts can't disagree. */
export interface TakeOffLayout {
  /** Planes that come from the footprint stand above those measured by hand. */
  readonly roofRows: number;
  readonly handRows: number;
  readonly planeRows: number;
  readonly typedRows: Readonly<Record<TypedKind, number>>;
  readonly planes: number;
  readonly planeTotal: number;
  readonly courses: number;
  readonly trim: number;
  readonly trimTotals: number;
  readonly order: number;
  readonly starters: number;
  readonly cautions: number;
}

/** Rows of section title and headings above a section's first row. */
const HEAD_ROWS = 2;
const GAP = 1;
/** Lines of the order; a test sees to it that the parts of the sheet stay apart. */
const ORDER_LINES = 11;

const typedRowsOf = ({ runs }: TakeOffOptions): TakeOffLayout["typedRows"] =>
  Object.fromEntries(
    TYPED_KINDS.map((kind) => [
      kind,
      Math.max(FEWEST_TYPED_ROWS, runs.filter((run) => run.kind === kind).length),
    ]),
  ) as TakeOffLayout["typedRows"];

export const layOutTakeOff = (options: TakeOffOptions): TakeOffLayout => {
  const roofRows = options.roof ? layOutRoof(options.roof).sides : 0;
  const handRows = Math.max(FEWEST_PLANE_ROWS, options.planes.length + SPARE_PLANE_ROWS);
  const planeRows = roofRows + handRows;
  const typedRows = typedRowsOf(options);
  const planes = 3 + options.notes.length + HEAD_ROWS;
  const planeTotal = planes + planeRows;
  const courses = planeTotal + 1 + GAP + HEAD_ROWS;
  const trim = courses + planeRows + 1 + GAP + HEAD_ROWS;
  const trimTotals = trim + 2 * handRows + TYPED_KINDS.reduce((sum, kind) => sum + typedRows[kind], 0);
  const order = trimTotals + RUN_KINDS.length + GAP + HEAD_ROWS;
  const starters = order + ORDER_LINES + GAP + HEAD_ROWS + 1;
  return {
    roofRows,
    handRows,
    planeRows,
    typedRows,
    planes,
    planeTotal,
    courses,
    trim,
    trimTotals,
    order,
    starters,
    cautions: starters + STARTER_ROWS,
  };
};
