import { isBlank, type Cell } from "../../../shared/cell";
import { readLengthText } from "../../../shared/lengthText";
import { readPitchText } from "../../../shared/pitchText";

/** What kinds of values a column holds. They decide where a heading alone is ambiguous. */
export interface ColumnData {
  readonly filled: number;
  readonly numbers: readonly number[];
  /** Texts such as `18' 6 1/2"`. */
  readonly tapes: number;
  /** Texts such as `6:12`. */
  readonly pitches: number;
  /** Numbers stored as text, without a unit. */
  readonly bareTexts: readonly string[];
}

const isTape = (text: string): boolean => {
  const reading = readLengthText(text);
  return reading !== undefined && "inches" in reading;
};

/** A pitch with a unit or a run. A bare number could be anything. */
const isPitch = (text: string): boolean =>
  readPitchText(text) !== undefined && /[:°%]|\/ ?12$|in|on|deg/i.test(text);

const isBareText = (text: string): boolean => {
  const reading = readLengthText(text);
  return reading !== undefined && "bare" in reading;
};

export const columnData = (cells: readonly (Cell | undefined)[]): ColumnData => {
  const filled = cells.filter((cell) => !isBlank(cell));
  const texts = filled.filter((cell): cell is string => typeof cell === "string");
  return {
    filled: filled.length,
    numbers: filled.filter((cell): cell is number => typeof cell === "number"),
    tapes: texts.filter(isTape).length,
    pitches: texts.filter(isPitch).length,
    bareTexts: texts.filter(isBareText),
  };
};

/** Whether these are more than half of the filled cells. */
export const isMost = (count: number, { filled }: ColumnData): boolean => count * 2 > filled;
