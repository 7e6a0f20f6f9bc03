import { SQ_FT_PER_SQUARE } from "../../shared/units";

export const SQ_M_PER_SQ_FT = 0.092_903_04;

const AREA_UNITS: readonly (readonly [RegExp, number])[] = [
  [/^(?:sq\.? ?ft\.?|sf|ft ?(?:²|\^?2)|square (?:feet|foot))$/, 1],
  [/^(?:sq\.? ?m\.?|m ?(?:²|\^?2)|square (?:m|met(?:re|er)s?))$/, 1 / SQ_M_PER_SQ_FT],
  [/^squares?$/, SQ_FT_PER_SQUARE],
];

/** Square feet in one unit of area; undefined if it isn't a unit of area. */
const sqFtPer = (unit: string): number | undefined => AREA_UNITS.find(([pattern]) => pattern.test(unit))?.[1];

const singular = (unit: string): string => unit.replace(/s$/, "");

/** Converts a number from `unit` to `wanted`; undefined if the units don't match. A number alone matches any unit. */
export const inUnit = (number: number, unit: string, wanted: string): number | undefined => {
  if (unit === "" || wanted === "" || singular(unit) === singular(wanted)) return number;
  const [from, to] = [sqFtPer(unit), sqFtPer(wanted)];
  return from === undefined || to === undefined ? undefined : (number * from) / to;
};
