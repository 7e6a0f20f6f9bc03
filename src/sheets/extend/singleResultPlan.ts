import { readDecimal } from "../../../shared/amountText";
import type { CellAddress } from "../../workbook/address";
import type { CellPatch, PatchCell } from "../../workbook/patch";
import { formula, number, text, type CellContent } from "../../workbook/plan";
import { rowFormula } from "./extendPlan";
import { meaningOf } from "./meanings";
import type { Field, ResultOption } from "./resultOptions";
import { resultExpression, type MappedColumn, type AvailableInputs } from "./rowExpressions";
import { typedArgument } from "./typedArgument";
import { unitOf } from "./unit";

/** Rows of a small block that are ready to fill in. */
const ROWS = 5;

type WithoutColumns = Omit<AvailableInputs, "columns">;

/** One result in one cell. Its inputs are typed, or come from the panel sheet's names. */
export const oneCellPlan = (
  sheet: string,
  at: CellAddress,
  option: ResultOption,
  inputs: WithoutColumns,
): CellPatch => {
  const expression = resultExpression(option.spec, { ...inputs, columns: [] });
  return {
    sheet,
    at,
    cells: [
      [
        {
          content: formula(rowFormula(expression, at.row)),
          numberFormat: option.spec.result.numberFormat,
        },
      ],
    ],
  };
};

/** A typed value as cell content: a plain number as a number, everything else as text, never as a formula. */
const typedContent = (typed: string): CellContent => {
  const amount = readDecimal(typed);
  return amount === undefined ? text(typed) : number(amount);
};

/** One column per value that is required or was typed. */
const inputColumns = (option: ResultOption, { typed }: WithoutColumns): Field[] =>
  option.fields.filter(({ key, parameter }) => !parameter.optional || (typed[key] ?? "").trim() !== "");

/** A typed value goes into the first row, if the function accepts it. */
const firstRowCell = (
  option: ResultOption,
  { key, parameter }: Field,
  { typed }: WithoutColumns,
): PatchCell | null => {
  const value = (typed[key] ?? "").trim();
  if (value === "") return null;
  typedArgument(option.spec, parameter, value);
  return { content: typedContent(value) };
};

/** A small block: headings, one column per value to fill in, and the result beside them. */
export const smallBlockPlan = (
  sheet: string,
  at: CellAddress,
  { option, heading }: { readonly option: ResultOption; readonly heading: string },
  inputs: WithoutColumns,
): CellPatch => {
  const fields = inputColumns(option, inputs);
  const columns = fields.map(({ label, parameter }, index): MappedColumn => ({
    column: at.column + index,
    heading: label,
    meaning: meaningOf(parameter),
    unit: unitOf(parameter),
  }));
  const expression = resultExpression(option.spec, { ...inputs, columns });
  const rows = Array.from({ length: ROWS }, (_, index): (PatchCell | null)[] => [
    ...fields.map((field) => (index === 0 ? firstRowCell(option, field, inputs) : null)),
    {
      content: formula(rowFormula(expression, at.row + 1 + index)),
      numberFormat: option.spec.result.numberFormat,
    },
  ]);
  const headings = [...columns.map((column) => column.heading), heading.trim() || option.heading];
  return { sheet, at, cells: [headings.map((each): PatchCell => ({ content: text(each) })), ...rows] };
};
