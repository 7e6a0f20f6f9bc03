import type { Cell } from "../../../../shared/cell";

export type PrintedCell = readonly [row: number, column: number, text: string];

/** Pages as printed before their wording was revised, with the answers that were typed into them. */
interface EarlierPage {
  readonly printed: readonly PrintedCell[];
  readonly answers: readonly PrintedCell[];
}

/** Version A of seed 9, half day, feet and inches. */
export const EARLIER_TOPIC_PAGE: EarlierPage = {
  printed: [
    [0, 0, "2  Stagger and starters"],
    [1, 0, "Seed 9 · version A · half day · feet and inches · 2 problems · topics 4 5"],
    [3, 0, "Courses start at the gable in turn with a full, a half, a three-quarter and a quarter panel,"],
    [4, 0, "and then again from the full one. The starter stops short of the gable's edge by the"],
    [5, 0, "setback; its fold is bent up there. Find what the starter of course 9 covers, and the blank"],
    [6, 0, "that is cut for it before the bend. Find also how many whole sets of four starters the gable"],
    [7, 0, "takes."],
    [9, 0, "Width of a panel that shows"],
    [9, 1, '24"'],
    [10, 0, "Gable setback"],
    [10, 1, '1"'],
    [11, 0, "Gable fold"],
    [11, 1, '2"'],
    [12, 0, "Courses up the gable"],
    [12, 1, "30"],
    [34, 0, "Find"],
    [34, 1, "Your answer"],
    [34, 2, "Unit"],
    [34, 3, "Write it as"],
    [35, 0, "Starter of course 9 covers"],
    [36, 0, "Blank to cut for it"],
    [37, 0, "Sets of starters"],
    [39, 0, "Working"],
  ],
  answers: [
    [35, 1, '23"'],
    [36, 1, '23"'],
    [37, 1, "8"],
  ],
};

/** The same class's full-day course in metric units. */
export const EARLIER_COURSE_PAGE: EarlierPage = {
  printed: [
    [0, 0, "3  Rafter factor"],
    [1, 0, "Seed 9 · version A · half day · metric · full-day course"],
    [3, 0, "The day's roof: from pitch and run to the length up the slope. The run was measured level,"],
    [4, 0, "from the wall line to below the ridge; the roof goes on beyond the wall. Find the rafter"],
    [5, 0, "factor, and the length up the slope from the eave's edge to the ridge. Where another problem"],
    [6, 0, "is named, go on with the right answer there, of your own version."],
    [8, 0, "Run, level"],
    [8, 1, "half of the span of problem 2"],
    [9, 0, "Pitch"],
    [9, 1, "as found in problem 2, to the nearest degree"],
    [10, 0, "Overhang, level"],
    [10, 1, "400 mm"],
    [28, 0, "Find"],
    [28, 1, "Your answer"],
    [28, 2, "Unit"],
    [28, 3, "Write it as"],
    [29, 0, "Rafter factor"],
    [30, 0, "Length up the slope"],
    [32, 0, "Working"],
  ],
  answers: [
    [29, 1, "1.167"],
    [30, 1, "4217 mm"],
  ],
};

const ROWS = 80;
const COLUMNS = 4;

/** Printed and typed cells as a host reads a sheet. */
export const cellsOf = (
  ...cells: readonly (readonly [row: number, column: number, value: Cell])[]
): Cell[][] => {
  const rows: Cell[][] = Array.from({ length: ROWS }, () => Array.from({ length: COLUMNS }, () => null));
  for (const [row, column, value] of cells) (rows[row] as Cell[])[column] = value;
  return rows;
};
