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

/** Kept as it is typed: the cell's format says so. */
const TEXT_FORMAT = "@";

const PERCENT = /^\s*([-+]?(?:\d+\.?\d*|\.\d+))\s*%\s*$/;

/** Money or a large number as people write it: `24,500.00`, `$24,500`, `-$9.50`. */
const AMOUNT = /^\s*([-+]?)\s*(\$?)\s*(\d{1,3}(?:,\d{3})+|\d+)(\.\d*)?\s*$/;

/** The number that a spreadsheet makes of a share, an ISO date, or an amount with commas, and the format in which it shows it. */
export const parseTypedNumber = (
  typed: string,
): { readonly value: number; readonly format: string } | undefined => {
  const [, share] = PERCENT.exec(typed) ?? [];
  if (share !== undefined)
    return {
      // Decimal places are moved in the text: 7.25 % is 0.0725, not what binary arithmetic makes of it.
      value: Number(`${share}e-2`),
      format: share.includes(".") ? "0.00%" : "0%",
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
/** As many as binary arithmetic keeps: 7.25 % is 0.0725. */
const DIGITS = 15;

const inDecimals = (value: number): number => Number(value.toPrecision(DIGITS));

/** The percent of a share: 0.0725 is 7.25. */
export const percentOf = (share: number): number => inDecimals(share * HUNDRED);

const isNumber = (typed: unknown): typed is string | number =>
  (typeof typed === "number" || (typeof typed === "string" && typed.trim() !== "")) &&
  Number.isFinite(Number(typed));

/** In a cell that shows percent a spreadsheet takes 8 for 8 %, and 0.08 for what it is. */
export const typedPercent = (typed: unknown, format: string | undefined): number | undefined =>
  format !== undefined && numfmt.isPercentFormat(format) && isNumber(typed) && Math.abs(Number(typed)) >= 1
    ? inDecimals(Number(typed) / HUNDRED)
    : undefined;

/** The engine alone keeps `10%`, `2026-06-01` and `24,500.00` as text; in a spreadsheet they are numbers. */
export const parseTypedNumbers = (injector: Injector, workbook: Workbook): void => {
  injector.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    handler: (cell, { row, col, worksheet }, next) => {
      const amount =
        typeof cell?.v === "string" && (cell.f ?? null) === null ? parseTypedNumber(cell.v) : undefined;
      const look = workbook.getStyles().get(worksheet.getCellRaw(row, col)?.s);
      const format = look?.n?.pattern;
      const share = (cell?.f ?? null) === null ? typedPercent(cell?.v, format) : undefined;
      if (cell && share !== undefined) return next({ ...cell, v: share, t: CellValueType.NUMBER, p: null });
      if (!cell || !amount || format === TEXT_FORMAT) return next(cell);
      const read: Nullable<ICellData> = { ...cell, v: amount.value, t: CellValueType.NUMBER, p: null };
      if (format === undefined) read.s = { ...look, n: { pattern: amount.format } };
      return next(read);
    },
  });
};
