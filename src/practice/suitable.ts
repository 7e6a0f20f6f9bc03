import type { Answer, Solution } from "./problem";

/** Nearer than this to where rounding turns, a sixteenth more or less would change the answer. */
const LEAST_LEEWAY = 0.1;
/** A slip must lead so many tolerances away, or it couldn't be told from the right answer. */
const LEAST_TOLERANCES = 1.5;

/** What an answer may be: nothing that no tape, no crew and no purse ever saw. */
const RANGES: Readonly<Record<Answer["field"]["kind"], readonly [least: number, most: number]>> = {
  length: [1.5, 3_600],
  pitch: [2, 24],
  degrees: [5, 70],
  number: [0.1, 150],
  count: [2, 4_000],
  area: [40, 10_000],
  money: [1, 50_000],
  word: [-Infinity, Infinity],
};

const isInRange = ({ field, value }: Answer): boolean => {
  const [least, most] = RANGES[field.kind];
  return typeof value !== "number" || (value >= least && value <= most);
};

const standsApart = ({ value, tolerance, mistakes }: Answer): boolean =>
  typeof value !== "number" ||
  mistakes.every((mistake) => Math.abs(mistake.value - value) > LEAST_TOLERANCES * tolerance);

const isClear = ({ leeway = 1 }: Answer): boolean => leeway >= LEAST_LEEWAY;

/** Whether a problem can be set: answers in range, none that hinges on a rounding edge, each slip apart from what is right. */
export const isHumane = ({ answers }: Solution): boolean =>
  answers.every((answer) => isInRange(answer) && isClear(answer) && standsApart(answer));
