import type { Answer, Solution } from "../topic";

/** Closer than this to the point where rounding changes, a sixteenth more or less would change the answer. */
const MIN_ROUNDING_MARGIN = 0.1;
/** A mistake must be this many tolerances away from the right answer, or marking couldn't tell the two apart. */
const MIN_TOLERANCES_APART = 1.5;

/** Realistic answers by kind: lengths in inches, pitches as rise in 12, areas in sq ft. */
const RANGES: Readonly<Record<Answer["field"]["kind"], readonly [min: number, max: number]>> = {
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
  const [min, max] = RANGES[field.kind];
  return typeof value !== "number" || (value >= min && value <= max);
};

const mistakesAreDistinct = ({ value, tolerance, mistakes }: Answer): boolean =>
  typeof value !== "number" ||
  mistakes.every((mistake) => Math.abs(mistake.value - value) > MIN_TOLERANCES_APART * tolerance);

const isClearOfRounding = ({ roundingMargin = 1 }: Answer): boolean => roundingMargin >= MIN_ROUNDING_MARGIN;

/** Whether a class can be given the problem: realistic answers, no close rounding, every mistake distinct from the right answer. */
export const isSuitable = ({ answers }: Solution): boolean =>
  answers.every((answer) => isInRange(answer) && isClearOfRounding(answer) && mistakesAreDistinct(answer));
