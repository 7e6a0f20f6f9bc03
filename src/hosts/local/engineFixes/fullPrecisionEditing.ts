import { CellValueType, numfmt, type Injector, type Workbook } from "@univerjs/core";
import { BEFORE_CELL_EDIT, SheetInterceptorService } from "@univerjs/sheets";
import { isDateSerial, isoDate } from "../../../../shared/sheetDate";
import { percentOf } from "./typedNumbers";

/**
 * How a person would type the number of a cell with this format: read back, it is the same number. Undefined for a time, which
 * stays as the cell shows it: 6:12 may be a pitch.
 */
export const textAtFullPrecision = (value: number, format: string): string | undefined => {
  if (numfmt.isDateFormat(format))
    return Number.isInteger(value) && isDateSerial(value) ? isoDate(value) : undefined;
  return numfmt.isPercentFormat(format) ? `${percentOf(value)}%` : String(value);
};

/**
 * The engine alone opens a cell with what its format shows: 7.2567 % that shows 7.26% became 7.26 % when a person looked into
 * the cell and left it with Enter.
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
