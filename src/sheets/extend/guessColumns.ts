import { STEEPEST_PITCH } from "../../../shared/kinds/pitch";
import { labelInWords } from "../../../shared/spec/parameterCaption";
import { isMost, type ColumnData } from "./columnData";
import { readHeading } from "./headingUnit";
import { MEANINGS, usualUnit, type Meaning } from "./meanings";
import { unitsLike, type UnitName } from "./unit";
import { EDGE_WORDS, NOT_A_MEASUREMENT, SYNONYMS } from "./headingSynonyms";

/** What a column probably holds. The user confirms or corrects it before anything is written. */
export interface ColumnGuess {
  readonly meaning: Meaning | undefined;
  readonly unit: UnitName;
}

const NOTHING: ColumnGuess = { meaning: undefined, unit: "plain" };

/** A slope of more than 200 % is a typing error. */
const LARGEST_SHARE = 2;
/** Roofs steeper than 12 in 12 are rare, so a column of larger numbers is in degrees. */
const USUALLY_STEEPEST = 12;

/** The meaning whose own name is the heading. */
const meaningNamed = (words: string): Meaning | undefined =>
  MEANINGS.find((meaning) => labelInWords(meaning) === words);

/** "Slope" alone may be a pitch or a length. The unit decides; without one, the data. */
const readSlope = (unit: UnitName | undefined, data: ColumnData): Meaning => {
  if (unit !== undefined) return unitsLike("rise").includes(unit) ? "pitch" : "slopeLength";
  const isLength = isMost(data.tapes, data) || data.numbers.some((each) => each > STEEPEST_PITCH);
  return isLength ? "slopeLength" : "pitch";
};

/** Small whole numbers up to this count edges; larger ones are feet. */
const MOST_EDGES = 4;

const areFew = ({ numbers, tapes }: ColumnData): boolean =>
  tapes === 0 && numbers.length > 0 && numbers.every((each) => Number.isInteger(each) && each <= MOST_EDGES);

const meaningOfWords = (words: string, unit: UnitName | undefined, data: ColumnData): Meaning | undefined => {
  if (NOT_A_MEASUREMENT.test(words)) return undefined;
  const found = meaningNamed(words) ?? SYNONYMS.find(([, pattern]) => pattern.test(words))?.[0];
  if (found === "length" && unit === undefined && EDGE_WORDS.test(words) && areFew(data)) return undefined;
  if (found !== undefined) return found;
  if (/\bslope\b/.test(words)) return readSlope(unit, data);
  // A heading that is only a unit; then headings that say nothing, over cells that do.
  if (words === "" && unit !== undefined) return unitsLike("sqFt").includes(unit) ? "area" : "length";
  if (data.filled > 0 && isMost(data.tapes, data)) return "length";
  if (data.filled > 0 && isMost(data.pitches, data)) return "pitch";
  return undefined;
};

/** A percentage in a cell is stored as a fraction of 1, unless it was typed as a plain number. */
const percentUnit = (meaning: Meaning, { numbers }: ColumnData): UnitName => {
  if (usualUnit(meaning) === "fraction")
    return areAll(numbers, (each) => each < 1) ? "fraction" : "hundredths";
  return areAll(numbers, (each) => each <= LARGEST_SHARE) ? "share" : "percent";
};

const areAll = (numbers: readonly number[], test: (each: number) => boolean): boolean =>
  numbers.length > 0 && numbers.every(test);

const median = (numbers: readonly number[]): number =>
  [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? 0;

/** The unit if the heading names none: an angle is in degrees; otherwise the numbers may tell. */
const unitWithoutHeading = (meaning: Meaning, words: string, { numbers }: ColumnData): UnitName => {
  const usual = usualUnit(meaning);
  if (usual === "fraction" && areAll(numbers, (each) => each >= 1)) return "hundredths";
  if (usual !== "rise") return usual;
  if (/\bangle\b/.test(words) || median(numbers) > USUALLY_STEEPEST) return "degrees";
  return areAll(numbers, (each) => each <= 1) ? "share" : "rise";
};

export const guessColumn = (heading: string, data: ColumnData): ColumnGuess => {
  const { words, unit } = readHeading(heading);
  const meaning = meaningOfWords(words, unit, data);
  if (meaning === undefined) return NOTHING;
  const said =
    unit === "percent" ? percentUnit(meaning, data) : (unit ?? unitWithoutHeading(meaning, words, data));
  // `Trim (sq ft)` isn't a length of trim.
  return unitsLike(usualUnit(meaning)).includes(said) ? { meaning, unit: said } : NOTHING;
};

/**
 * Guesses all columns of a block. The first column that fits gets a meaning. A plain "Length" beside a width is the slope
 * length, unless another column gives that.
 */
export const guessColumns = (headings: readonly string[], data: readonly ColumnData[]): ColumnGuess[] => {
  const guesses = headings.map((heading, index) => guessColumn(heading, data[index] as ColumnData));
  const has = (meaning: Meaning): boolean => guesses.some((guess) => guess.meaning === meaning);
  const lengthIsSlope = has("eave") && !has("slopeLength") && !has("run");
  const taken = new Set<Meaning>();
  return guesses.map(({ meaning, unit }, index): ColumnGuess => {
    const isPlainLength = /^len(?:gth)?s?$/.test(readHeading(headings[index] ?? "").words);
    const meant = lengthIsSlope && isPlainLength ? "slopeLength" : meaning;
    if (meant === undefined || taken.has(meant)) return NOTHING;
    taken.add(meant);
    return { meaning: meant, unit };
  });
};
