import { lengthInFeet, lengthInInches } from "../../../shared/kinds/length";
import { quantity } from "../../../shared/kinds/number";
import { pitch } from "../../../shared/kinds/pitch";
import { writeTape } from "../../../shared/lengthText";
import { INCHES_PER_FOOT } from "../../../shared/units";
import type { CellLabel } from "../trace/cellLabels";
import type { Measurement } from "../trace/measurements";

/** Sixteenths: as a tape is read. */
const TAPE_DENOMINATOR = 16;
const DIGITS = 6;

/** Beyond these two spellings of one length may differ. */
const SAME_DIGITS = 12;

const feet = lengthInFeet();
const inches = lengthInInches();
const rise = pitch();
const plainNumber = quantity("");

const asTape = (value: Measurement["value"]): string => {
  try {
    return writeTape(feet.read(value, ""), TAPE_DENOMINATOR);
  } catch {
    // What is no length is shown as it was typed.
    return String(value);
  }
};

const plain = (value: Measurement["value"]): string =>
  typeof value === "number" ? String(Number(value.toPrecision(DIGITS))) : String(value);

const PITCH = /\bpitch\b/i;
const SHARE = /^waste$/i;
const PRICE = /\bprice\b/i;

const isPitch = ({ heading, row }: CellLabel): boolean => PITCH.test(heading || row);

/** A value as the functions read it, `9:12` as 9 and `216"` as 18 ft; as it was typed where it is neither. */
export const parsedValue = (measurement: Measurement): Measurement["value"] => {
  const { value, unit } = measurement;
  const kind = unit === "ft" ? feet : unit === "in" ? inches : isPitch(measurement) ? rise : plainNumber;
  try {
    return Number(kind.read(value, "").toPrecision(SAME_DIGITS));
  } catch {
    // What is no number is compared letter by letter.
    return value;
  }
};

/** A value as roofers write it: `18' 0"`, `6 in 12`, `24 in`. */
export const valueText = (measurement: Measurement | undefined): string => {
  if (!measurement) return "blank";
  const { value, unit, row, heading } = measurement;
  if (unit === "ft") return asTape(value);
  if (typeof value !== "number") return plain(value);
  if (isPitch(measurement)) return `${plain(value)} in 12`;
  if (SHARE.test(heading)) return `${plain(value * 100)}%`;
  const name = `${row} ${heading}`;
  if (PRICE.test(name)) return value.toFixed(2);
  // `clips per panel` names its unit.
  return unit === "" || name.split(/\W+/).includes(unit) ? plain(value) : `${plain(value)} ${unit}`;
};

/** Headings that read differently in a sentence. */
const WORDS: Readonly<Record<string, string>> = {
  "slope, if taped": "slope length",
  "tail, sloped": "sloped tail",
  "chimney or pipe": "",
  value: "",
};

/** `Slope, if taped` as `slope length`; empty text where the row's name is enough. */
export const headingText = ({ heading }: Pick<CellLabel, "heading">): string => {
  const words = heading.replace(/^(?:or|and) /, "").toLowerCase();
  return WORDS[words] ?? words.replaceAll(",", "");
};

/** `2 more courses`, `1 fewer panel laid`. */
export const countChangeText = (change: number, things: string): string => {
  const size = Math.abs(change);
  const named = size === 1 ? things.replace(/s\b/, "") : things;
  return `${plain(size)} ${change > 0 ? "more" : "fewer"} ${named}`;
};

/** `80' 4" more underlayment`; nothing where a tape shows none. */
export const lengthChangeText = (changeFt: number, things: string): string[] =>
  Math.round(Math.abs(changeFt) * INCHES_PER_FOOT * TAPE_DENOMINATOR) === 0
    ? []
    : [`${writeTape(Math.abs(changeFt), TAPE_DENOMINATOR)} ${changeFt > 0 ? "more" : "less"} ${things}`];
