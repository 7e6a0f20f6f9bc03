import type { Area } from "../../workbook/address";
import { readArea } from "../../workbook/address";
import type { Survey } from "../../workbook/survey";

const TOTAL = /^(?:grand |sub ?)?totals?\b/i;
const TOTAL_AT_THE_FOOT = /^(?:(?:grand |sub ?)?totals?|sum|all)\b/i;

/** `SUM(B4:B9)`, `SUBTOTAL(9,B4:B9)`, `SUBTOTAL(109,[Eave])`: the call, and what it adds. */
const SUM = /\b(SUM\(|SUBTOTAL\(\s*\d+\s*,)\s*([^(),]*)/i;

/** The call of a formula that adds cells above it. A sum along its own row isn't a total. */
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
 * How the totals in the block's last row begin, such as `SUM(`. If only the row's label says "Total", that is `SUM(` too.
 * undefined if the block has no totals. If the row above also adds what is above it, the column is a running total.
 */
export const totalCall = (survey: Survey, area: Area): string | undefined => {
  const { row } = area.to;
  const call = callInRow(survey, area, row);
  if (call !== undefined && callInRow(survey, area, row - 1) === undefined) return call;
  return TOTAL_AT_THE_FOOT.test(labelOf(survey, area, row)) ? "SUM(" : undefined;
};
