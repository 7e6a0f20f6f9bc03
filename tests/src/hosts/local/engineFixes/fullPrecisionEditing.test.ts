import { BEFORE_CELL_EDIT, SheetInterceptorService } from "@univerjs/sheets";
import { localCatalog } from "../../../../../src/hosts/local/formulas/catalog";
import {
  editAtFullPrecision,
  textAtFullPrecision,
} from "../../../../../src/hosts/local/engineFixes/fullPrecisionEditing";
import { createHeadlessEngine } from "../../../../../src/hosts/local/workbook/headless";
import { parseTypedNumber } from "../../../../../src/hosts/local/engineFixes/typedNumbers";
import { number } from "../../../../../src/workbook/plan";

describe("a number that a person opens to edit it", () => {
  it.each([
    [0.072567, "0.00%", "7.2567%"],
    [1, "0%", "100%"],
    [1234.567, "$#,##0", "1234.567"],
    [46_174, "m/d/yyyy", "2026-06-01"],
    [0.1 + 0.2, "0.0", "0.30000000000000004"],
  ])(
    "%d in a cell of the format %s is %s, whatever the cell shows, and read back the same",
    (value, format, text) => {
      expect(textAtFullPrecision(value, format)).toBe(text);
      expect(parseTypedNumber(text)?.value ?? Number(text)).toBe(value);
    },
  );

  const opened = (value: number, numberFormat?: string): unknown => {
    const cell = {
      row: 0,
      column: 0,
      content: number(value),
      ...(numberFormat !== undefined && { numberFormat }),
    };
    const engine = createHeadlessEngine(localCatalog, {
      sheets: [{ name: "Sheet1", cells: [cell], columnWidths: [], rowHeights: {}, frozenRows: 0 }],
      names: [],
    });
    const { injector, workbook } = engine;
    editAtFullPrecision(injector, workbook);
    const worksheet = workbook.getActiveSheet();
    // What numbers show is the format's: here in the place of the page's plugin.
    const shown = { ...worksheet.getCell(0, 0), v: "7%" };
    const location = {
      workbook,
      worksheet,
      unitId: workbook.getUnitId(),
      subUnitId: worksheet.getSheetId(),
      row: 0,
      col: 0,
      origin: worksheet.getCellRaw(0, 0),
    };
    const edited = injector
      .get(SheetInterceptorService)
      .writeCellInterceptor.fetchThroughInterceptors(BEFORE_CELL_EDIT)(shown, location);
    engine.dispose();
    return edited?.v;
  };

  it("stands in the editor in full", () => {
    expect(opened(0.072567, "0%")).toBe("7.2567%");
  });

  it("is left to the engine in a cell without a format, and where it is a time", () => {
    expect(opened(0.072567)).toBe("7%");
    expect(textAtFullPrecision((6 * 60 + 12) / 1440, "h:mm")).toBeUndefined();
    expect(opened((6 * 60 + 12) / 1440, "h:mm")).toBe("7%");
  });
});
