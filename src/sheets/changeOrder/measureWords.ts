import { lengthInFeet } from "../../../shared/kinds/length";
import { writeTape } from "../../../shared/lengthText";
import type { Measure, MeasureKey } from "../trace/measures";

/** Sixteenths: as a tape is read. */
const TAPE_DENOMINATOR = 16;
const DIGITS = 6;

const feet = lengthInFeet();

const asTape = (value: Measure["value"]): string => {
  try {
    return writeTape(feet.read(value, ""), TAPE_DENOMINATOR);
  } catch {
    // What is no length is shown as it was typed.
    return String(value);
  }
};

const plain = (value: Measure["value"]): string =>
  typeof value === "number" ? String(Number(value.toPrecision(DIGITS))) : String(value);

const PITCH = /\bpitch\b/i;

/** A value as a person says it: `18' 0"`, `6 in 12`, `24 in`. */
export const valueInWords = (measure: Measure | undefined): string => {
  if (!measure) return "blank";
  const { value, unit, heading, row } = measure;
  if (unit === "ft") return asTape(value);
  if (typeof value === "number" && PITCH.test(heading || row)) return `${plain(value)} in 12`;
  return typeof value === "number" && unit !== "" ? `${plain(value)} ${unit}` : plain(value);
};

/** Headings that need other words once they stand in a sentence. */
const WORDS: Readonly<Record<string, string>> = { "slope, if taped": "slope length", value: "" };

/** `Slope, if taped` of `Plane B` as `slope length`; nothing where the row's name says it all. */
export const headingInWords = ({ heading }: Pick<MeasureKey, "heading">): string => {
  const words = heading.replace(/^(?:or|and) /, "").toLowerCase();
  return WORDS[words] ?? words.replaceAll(",", "");
};

/** `2 more courses`, `1 fewer panel laid`. */
export const countInWords = (change: number, things: string): string => {
  const size = Math.abs(change);
  const named = size === 1 ? things.replace(/s\b/, "") : things;
  return `${plain(size)} ${change > 0 ? "more" : "fewer"} ${named}`;
};
