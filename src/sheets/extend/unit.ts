import type { NameEnding } from "../../../shared/kinds/kind";
import type { Parameter } from "../../../shared/spec/spec";
import { INCHES_PER_FOOT, MM_PER_INCH, PITCH_RUN, SQ_FT_PER_SQUARE } from "../../../shared/units";
import { anglePitchSpec } from "../../../functions/slope/anglePitch";
import { call } from "../../workbook/formula";

const MM_PER_FOOT = INCHES_PER_FOOT * MM_PER_INCH;
const SQ_M_PER_SQ_FOOT = (MM_PER_FOOT / 1000) ** 2;

/** What is measured. A column's unit can be changed to another of the same dimension. */
type Dimension = "length" | "area" | "pitch" | "share" | "temperature" | "none";

interface Unit {
  readonly dimension: Dimension;
  /** In a base unit that is the same for the whole dimension. Units of pitch aren't multiples of each other. */
  readonly size?: number;
  readonly label: string;
}

export const UNITS = {
  ft: { dimension: "length", size: MM_PER_FOOT, label: "feet" },
  in: { dimension: "length", size: MM_PER_INCH, label: "inches" },
  yd: { dimension: "length", size: 3 * MM_PER_FOOT, label: "yards" },
  m: { dimension: "length", size: 1000, label: "meters" },
  cm: { dimension: "length", size: 10, label: "centimeters" },
  mm: { dimension: "length", size: 1, label: "millimeters" },
  sqFt: { dimension: "area", size: SQ_M_PER_SQ_FOOT, label: "square feet" },
  squares: { dimension: "area", size: SQ_FT_PER_SQUARE * SQ_M_PER_SQ_FOOT, label: "squares" },
  sqYd: { dimension: "area", size: 9 * SQ_M_PER_SQ_FOOT, label: "square yards" },
  sqM: { dimension: "area", size: 1, label: "square meters" },
  rise: { dimension: "pitch", label: "rise on 12" },
  degrees: { dimension: "pitch", label: "degrees" },
  percent: { dimension: "pitch", label: "percent, such as 50" },
  share: { dimension: "pitch", label: "percent, such as 0.5" },
  fraction: { dimension: "share", size: 1, label: "percent, such as 0.1" },
  hundredths: { dimension: "share", size: 0.01, label: "percent, such as 10" },
  degreesF: { dimension: "temperature", label: "°F" },
  plain: { dimension: "none", label: "as it is" },
} as const satisfies Record<string, Unit>;

export type UnitName = keyof typeof UNITS;

const UNIT_OF_ENDING: Readonly<Record<NameEnding, UnitName>> = {
  Ft: "ft",
  In: "in",
  SqFt: "sqFt",
  Degrees: "plain",
  F: "degreesF",
};

/** The unit in which a parameter reads a plain number. */
export const unitOf = ({ kind }: Parameter<unknown>): UnitName => {
  if (kind.shape === "cell" && kind.bareNumber) return kind.bareNumber;
  return kind.nameEnding ? UNIT_OF_ENDING[kind.nameEnding] : "plain";
};

/** The units that a column may have for a parameter of this unit. */
export const unitsLike = (unit: UnitName): UnitName[] =>
  (Object.keys(UNITS) as UnitName[]).filter((each) => UNITS[each].dimension === UNITS[unit].dimension);

/** Exact unit sizes have fewer than 12 digits. The rest is binary rounding error. */
const short = (value: number): string => String(Number(value.toPrecision(12)));

/** `C4/12`: multiplies or divides, whichever needs the shorter, exact number. */
const scaled = (cell: string, from: number, to: number): string => {
  const [factor, divisor] = [short(from / to), short(to / from)];
  return factor.length <= divisor.length ? `${cell}*${factor}` : `${cell}/${divisor}`;
};

const toRise = (cell: string, from: UnitName): string => {
  if (from === "degrees") return call(anglePitchSpec, cell);
  return from === "percent" ? `${cell}*${PITCH_RUN}/100` : `${cell}*${PITCH_RUN}`;
};

/**
 * A cell's value in a parameter's unit. A plain number is converted. Text has its own unit. A blank cell stays blank; IF alone
 * would make it 0.
 */
export const convertedCell = (cell: string, from: UnitName, to: UnitName): string => {
  const [source, target]: Unit[] = [UNITS[from], UNITS[to]];
  if (from === to || source?.dimension !== target?.dimension || !source || !target) return cell;
  const bare = source.size && target.size ? scaled(cell, source.size, target.size) : toRise(cell, from);
  return `IF(LEN(${cell})=0,"",IF(ISNUMBER(${cell}),${bare},${cell}))`;
};
