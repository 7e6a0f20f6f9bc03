import {
  CellValueType,
  numfmt,
  type ICellData,
  type Injector,
  type Nullable,
  type Workbook,
} from "@univerjs/core";
import { AFTER_CELL_EDIT, SheetInterceptorService } from "@univerjs/sheets";
import { serialOfIsoDate } from "../../../../shared/sheetDate";

/** The number format of a text cell, which keeps whatever is typed. */
const TEXT_FORMAT = "@";

const PERCENT = /^\s*([-+]?(?:\d+\.?\d*|\.\d+))\s*%\s*$/;

/** An amount of money or a number with commas: `24,500.00`, `$24,500`, `-$9.50`. */
const AMOUNT = /^\s*([-+]?)\s*(\$?)\s*(\d{1,3}(?:,\d{3})+|\d+)(\.\d*)?\s*$/;

/** The number and number format that a spreadsheet gives a typed percentage, ISO date, or amount with $ or commas. */
export const parseTypedNumber = (
  typed: string,
): { readonly value: number; readonly format: string } | undefined => {
  const [, percent] = PERCENT.exec(typed) ?? [];
  if (percent !== undefined)
    return {
      // The decimal point moves in the text, because 7.25 / 100 isn't exactly 0.0725 in binary arithmetic.
      value: Number(`${percent}e-2`),
      format: percent.includes(".") ? "0.00%" : "0%",
    };
  const [, sign = "", dollar = "", whole, decimals = ""] = AMOUNT.exec(typed) ?? [];
  if (whole !== undefined && (dollar !== "" || whole.includes(",")))
    return {
      value: Number(`${sign}${whole.replaceAll(",", "")}${decimals}`),
      format: `${dollar}#,##0${decimals === "" ? "" : ".00"}`,
    };
  const serial = serialOfIsoDate(typed.trim());
  return serial === undefined ? undefined : { value: serial, format: "yyyy-mm-dd" };
};

const HUNDRED = 100;
/** The decimal digits that binary arithmetic keeps. */
const DIGITS = 15;

const roundOffBinaryNoise = (value: number): number => Number(value.toPrecision(DIGITS));

/** A fraction in percent: 0.0725 is 7.25. */
export const percentOf = (fraction: number): number => roundOffBinaryNoise(fraction * HUNDRED);

const isNumber = (typed: unknown): typed is string | number =>
  (typeof typed === "number" || (typeof typed === "string" && typed.trim() !== "")) &&
  Number.isFinite(Number(typed));

/** The fraction for a number typed into a cell with a percent format: 8 means 8%, and numbers below 1 stay as they are (undefined). */
export const typedPercent = (typed: unknown, format: string | undefined): number | undefined =>
  format !== undefined && numfmt.isPercentFormat(format) && isNumber(typed) && Math.abs(Number(typed)) >= 1
    ? roundOffBinaryNoise(Number(typed) / HUNDRED)
    : undefined;

/** The engine keeps typed `10%`, `2026-06-01` and `24,500.00` as text. The fix makes them numbers, as in other spreadsheets. */
export const parseTypedNumbers = (injector: Injector, workbook: Workbook): void => {
  injector.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    handler: (cell, { row, col, worksheet }, next) => {
      const amount =
        typeof cell?.v === "string" && (cell.f ?? null) === null ? parseTypedNumber(cell.v) : undefined;
      const style = workbook.getStyles().get(worksheet.getCellRaw(row, col)?.s);
      const format = style?.n?.pattern;
      const fraction = (cell?.f ?? null) === null ? typedPercent(cell?.v, format) : undefined;
      if (cell && fraction !== undefined)
        return next({ ...cell, v: fraction, t: CellValueType.NUMBER, p: null });
      if (!cell || !amount || format === TEXT_FORMAT) return next(cell);
      const read: Nullable<ICellData> = { ...cell, v: amount.value, t: CellValueType.NUMBER, p: null };
      if (format === undefined) read.s = { ...style, n: { pattern: amount.format } };
      return next(read);
    },
  });
};
