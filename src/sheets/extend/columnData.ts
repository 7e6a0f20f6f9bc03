import { isBlank, type Cell } from "../../../shared/cell";
import { readLengthText } from "../../../shared/lengthText";
import { readPitchText } from "../../../shared/pitchText";

/** What a column's cells look like: a heading alone may be read in two ways. */
export interface ColumnData {
  readonly filled: number;
  readonly numbers: readonly number[];
  /** Texts such as `18' 6 1/2"`. */
  readonly tapes: number;
  /** Texts such as `6:12`. */
  readonly pitches: number;
  /** Texts that are a bare number: no unit can be told from them. */
  readonly bareTexts: readonly string[];
}

const isTape = (text: string): boolean => {
  const reading = readLengthText(text);
  return reading !== undefined && "inches" in reading;
};

/** More than a number, which may be anything. */
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

/** Most cells of a column that has any. */
export const isMost = (count: number, { filled }: ColumnData): boolean => count * 2 > filled;
