import type { NameEnding } from "../../../shared/kinds/kind";
import type { Parameter } from "../../../shared/spec/spec";
import { INCHES_PER_FOOT, MM_PER_INCH, PITCH_RUN, SQ_FT_PER_SQUARE } from "../../../shared/units";
import { anglePitchSpec } from "../../../functions/slope/anglePitch";
import { call } from "../../workbook/formula";

const MM_PER_FOOT = INCHES_PER_FOOT * MM_PER_INCH;
const SQ_M_PER_SQ_FOOT = (MM_PER_FOOT / 1000) ** 2;

/** What is measured; a column's unit can be changed to another of the same. */
type Dimension = "length" | "area" | "pitch" | "share" | "temperature" | "none";

interface Unit {
  readonly dimension: Dimension;
  /** In one unit of its dimension, the same for all of them; a pitch's are not multiples of each other. */
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

/** The unit that a parameter takes a bare number in. */
export const unitOf = ({ kind }: Parameter<unknown>): UnitName => {
  if (kind.shape === "cell" && kind.bareNumber) return kind.bareNumber;
  return kind.nameEnding ? UNIT_OF_ENDING[kind.nameEnding] : "plain";
};

/** The units that a column may be in where it goes to a parameter of this unit. */
export const unitsLike = (unit: UnitName): UnitName[] =>
  (Object.keys(UNITS) as UnitName[]).filter((each) => UNITS[each].dimension === UNITS[unit].dimension);

/** Twelve digits are more than a unit's exact size has; the rest is noise of binary arithmetic. */
const short = (value: number): string => String(Number(value.toPrecision(12)));

/** `C4/12`: multiplied or divided, whichever takes the shorter, exact number. */
const scaled = (cell: string, from: number, to: number): string => {
  const [factor, divisor] = [short(from / to), short(to / from)];
  return factor.length <= divisor.length ? `${cell}*${factor}` : `${cell}/${divisor}`;
};

const toRise = (cell: string, from: UnitName): string => {
  if (from === "degrees") return call(anglePitchSpec, cell);
  return from === "percent" ? `${cell}*${PITCH_RUN}/100` : `${cell}*${PITCH_RUN}`;
};

/**
 * A cell as it goes to a parameter. A bare number is converted; text carries its own unit; a blank cell stays blank,
 * which IF alone would make 0.
 */
export const convertedCell = (cell: string, from: UnitName, to: UnitName): string => {
  const [source, target]: Unit[] = [UNITS[from], UNITS[to]];
  if (from === to || source?.dimension !== target?.dimension || !source || !target) return cell;
  const bare = source.size && target.size ? scaled(cell, source.size, target.size) : toRise(cell, from);
  return `IF(LEN(${cell})=0,"",IF(ISNUMBER(${cell}),${bare},${cell}))`;
};
