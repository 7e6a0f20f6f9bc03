import type { Injector, Workbook } from "@univerjs/core";
import { BEFORE_CELL_EDIT, SheetInterceptorService } from "@univerjs/sheets";
import {
  editAtFullPrecision,
  textAtFullPrecision,
} from "../../../../../src/hosts/local/engineFixes/fullPrecisionEditing";
import { parseTypedNumber } from "../../../../../src/hosts/local/engineFixes/typedNumbers";
import { number } from "../../../../../src/workbook/plan";
import { openedUniver } from "../openedUniver";

describe("a number in a cell that is opened for editing", () => {
  it.each([
    [0.072567, "0.00%", "7.2567%"],
    [1, "0%", "100%"],
    [1234.567, "$#,##0", "1234.567"],
    [46_174, "m/d/yyyy", "2026-06-01"],
    [0.1 + 0.2, "0.0", "0.30000000000000004"],
  ])("%d with the format %s is %s, which gives the same number when typed back", (value, format, text) => {
    expect(textAtFullPrecision(value, format)).toBe(text);
    expect(parseTypedNumber(text)?.value ?? Number(text)).toBe(value);
  });

  /** The text with which the engine opens a cell for editing. */
  const edited = (
    value: number,
    numberFormat?: string,
    fix: (injector: Injector, workbook: Workbook) => void = editAtFullPrecision,
  ): unknown => {
    const format = numberFormat === undefined ? {} : { numberFormat };
    const cells = [{ row: 0, column: 0, content: number(value), ...format }];
    const { univer, injector, workbook } = openedUniver([
      { name: "Sheet1", cells, columnWidths: [], rowHeights: {}, frozenRows: 0 },
    ]);
    fix(injector, workbook);
    const worksheet = workbook.getActiveSheet();
    const location = {
      workbook,
      worksheet,
      unitId: workbook.getUnitId(),
      subUnitId: worksheet.getSheetId(),
      row: 0,
      col: 0,
      origin: worksheet.getCellRaw(0, 0),
    };
    const cell = injector
      .get(SheetInterceptorService)
      .writeCellInterceptor.fetchThroughInterceptors(BEFORE_CELL_EDIT)(worksheet.getCell(0, 0), location);
    univer.dispose();
    return cell?.v;
  };

  it("appears with every digit", () => {
    expect(edited(0.072567, "0%")).toBe("7.2567%");
  });

  it("is left to the engine in a cell without a format, and if it is a time", () => {
    expect(edited(0.072567)).toBe(0.072567);
    expect(textAtFullPrecision((6 * 60 + 12) / 1440, "h:mm")).toBeUndefined();
    expect(edited((6 * 60 + 12) / 1440, "h:mm")).toBe("6:12");
  });

  it("appears as formatted without the fix", () => {
    expect(edited(0.072567, "0%", () => undefined)).toBe("7%");
  });
});
