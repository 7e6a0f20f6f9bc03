import { CellValueType, numfmt, type Injector, type Workbook } from "@univerjs/core";
import { BEFORE_CELL_EDIT, SheetInterceptorService } from "@univerjs/sheets";
import { isDateSerial, isoDate } from "../../../../shared/sheetDate";
import { percentOf } from "./typedNumbers";

/**
 * The text that a person would type for the number of a cell with this format; typed back, it gives the same number. undefined for
 * a time, which stays as the cell shows it, because 6:12 may be a pitch.
 */
export const textAtFullPrecision = (value: number, format: string): string | undefined => {
  if (numfmt.isDateFormat(format))
    return Number.isInteger(value) && isDateSerial(value) ? isoDate(value) : undefined;
  return numfmt.isPercentFormat(format) ? `${percentOf(value)}%` : String(value);
};

/**
 * The engine opens a cell for editing with its formatted text, so 7.2567% in a cell that shows 7.26% became 7.26% when someone
 * opened the cell and left it with Enter. With the fix, the editor shows every digit.
 */
export const editAtFullPrecision = (injector: Injector, workbook: Workbook): void => {
  injector.get(SheetInterceptorService).writeCellInterceptor.intercept(BEFORE_CELL_EDIT, {
    handler: (cell, { row, col, worksheet }, next) => {
      const raw = worksheet.getCellRaw(row, col);
      const format = workbook.getStyles().get(raw?.s)?.n?.pattern;
      if (!cell || typeof raw?.v !== "number" || raw.t === CellValueType.BOOLEAN || format === undefined)
        return next(cell);
      return next({ ...cell, v: textAtFullPrecision(raw.v, format) ?? cell.v });
    },
  });
};
