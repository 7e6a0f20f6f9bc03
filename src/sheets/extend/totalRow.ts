import type { Area } from "../../workbook/address";
import { readArea } from "../../workbook/address";
import type { Survey } from "../../workbook/survey";

const TOTAL = /^(?:grand |sub ?)?totals?\b/i;
const TOTAL_AT_THE_FOOT = /^(?:(?:grand |sub ?)?totals?|sum|all)\b/i;

/** `SUM(B4:B9)`, `SUBTOTAL(9,B4:B9)`, `SUBTOTAL(109,[Eave])`: how it begins, and what it adds up. */
const SUM = /\b(SUM\(|SUBTOTAL\(\s*\d+\s*,)\s*([^(),]*)/i;

/** How a formula begins that adds up cells of rows above it: a sum along its own row is no total. */
const callIn = (formula: string, row: number): string | undefined => {
  const [, call, adds = ""] = SUM.exec(formula) ?? [];
  if (call === undefined || adds.includes("[")) return call;
  const { from } = readArea(adds.replaceAll("$", "").toUpperCase().trim());
  return from.row >= 0 && from.row < row ? call : undefined;
};

const callInRow = ({ formulas }: Survey, { from, to }: Area, row: number): string | undefined =>
  formulas[row]
    ?.slice(from.column, to.column + 1)
    .map((formula) => callIn(formula, row))
    .find((call) => call !== undefined);

/** The first text in a row of the block. */
const labelOf = ({ cells }: Survey, { from, to }: Area, row: number): string => {
  const texts =
    cells[row]?.slice(from.column, to.column + 1).filter((cell) => typeof cell === "string") ?? [];
  return (texts.find((cell) => cell.trim() !== "") ?? "").trim();
};

export const isSubtotal = (survey: Survey, area: Area, row: number): boolean =>
  TOTAL.test(labelOf(survey, area, row));

/**
 * How the block's last row writes its totals, such as `SUM(`, which also holds where only its label says that it is one;
 * undefined where it has none. Rows that all add up what is above them are a running total.
 */
export const totalCall = (survey: Survey, area: Area): string | undefined => {
  const { row } = area.to;
  const call = callInRow(survey, area, row);
  if (call !== undefined && callInRow(survey, area, row - 1) === undefined) return call;
  return TOTAL_AT_THE_FOOT.test(labelOf(survey, area, row)) ? "SUM(" : undefined;
};
