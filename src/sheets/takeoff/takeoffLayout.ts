import { layOutRoof } from "../roofSheet/roofSheetLayout";
import { TRIM_ROWS } from "./trimsSheet";
import { DECK_LINES } from "./deckLines";
import type { TakeoffOptions } from "./takeoffOptions";

const FEWEST_PLANE_ROWS = 4;
const SPARE_PLANE_ROWS = 2;
const FEWEST_PENETRATIONS = 3;
const SPARE_PENETRATIONS = 1;
const FEWEST_TYPED_RUNS = 9;
const SPARE_TYPED_RUNS = 3;
/** Rows for the starters of the longest stagger pattern to spill into. */
const STARTER_ROWS = 25;

/** A plane measured by hand has one eave and at most two gable edges. */
export const RUNS_OF_PLANE = ["eave", "gable", "gable"] as const;
/** A chimney has trim on four sides; a pipe uses only the first row. */
export const RUNS_OF_PENETRATION = 4;

/** The first row of each part of the takeoff, counted from 0. All sections read it here. */
export interface TakeoffLayout {
  /** Rows for planes from the footprint. They are above those measured by hand. */
  readonly roofRows: number;
  readonly handRows: number;
  readonly planeRows: number;
  readonly penetrationRows: number;
  readonly typedRunRows: number;
  readonly planes: number;
  readonly planeTotal: number;
  readonly courses: number;
  readonly penetrations: number;
  /** Runs of planes measured by hand, then of chimneys and pipes, then typed ones. */
  readonly runs: number;
  readonly penetrationRuns: number;
  readonly firstTypedRun: number;
  readonly trim: number;
  /** Warnings of what may be missing. */
  readonly checks: number;
  readonly deck: number;
  readonly starters: number;
  readonly cautions: number;
}

/** Rows of warnings. A test checks that the parts of the sheet don't overlap. */
export const CHECK_ROWS = 7;
/** Rows of section title and headings above a section's first row. */
const HEAD_ROWS = 2;
const GAP = 1;

export const layOutTakeoff = (options: TakeoffOptions): TakeoffLayout => {
  const roofRows = options.roof ? layOutRoof(options.roof).sides : 0;
  const handRows = Math.max(FEWEST_PLANE_ROWS, options.planes.length + SPARE_PLANE_ROWS);
  const planeRows = roofRows + handRows;
  const penetrationRows = Math.max(FEWEST_PENETRATIONS, options.penetrations.length + SPARE_PENETRATIONS);
  const typedRunRows = Math.max(FEWEST_TYPED_RUNS, options.runs.length + SPARE_TYPED_RUNS);
  const planes = 3 + options.notes.length + HEAD_ROWS;
  const planeTotal = planes + planeRows;
  const courses = planeTotal + 1 + GAP + HEAD_ROWS;
  const penetrations = courses + planeRows + 1 + GAP + HEAD_ROWS;
  const runs = penetrations + penetrationRows + GAP + HEAD_ROWS;
  const penetrationRuns = runs + handRows * RUNS_OF_PLANE.length;
  const firstTypedRun = penetrationRuns + penetrationRows * RUNS_OF_PENETRATION;
  const trim = firstTypedRun + typedRunRows + GAP + HEAD_ROWS;
  const checks = trim + TRIM_ROWS;
  const deck = checks + CHECK_ROWS + GAP + HEAD_ROWS;
  const starters = deck + DECK_LINES.length + GAP + HEAD_ROWS + 1;
  return {
    roofRows,
    handRows,
    planeRows,
    penetrationRows,
    typedRunRows,
    planes,
    planeTotal,
    courses,
    penetrations,
    runs,
    penetrationRuns,
    firstTypedRun,
    trim,
    checks,
    deck,
    starters,
    cautions: starters + STARTER_ROWS,
  };
};
