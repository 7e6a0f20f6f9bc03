import { AFTER_CELL_EDIT, SheetInterceptorService } from "@univerjs/sheets";
import type { Injector, Workbook } from "@univerjs/core";
import {
  parseTypedNumber,
  typedPercent,
  parseTypedNumbers,
} from "../../../../../src/hosts/local/engineFixes/typedNumbers";
import { openedUniver } from "../openedUniver";

describe("typed text becomes a number with a format, as in other spreadsheets", () => {
  it.each([
    ["10%", 0.1, "0%"],
    ["7.25 %", 0.0725, "0.00%"],
    ["2026-06-01", 46_174, "yyyy-mm-dd"],
    ["24,500", 24_500, "#,##0"],
    ["24,500.00", 24_500, "#,##0.00"],
    ["-1,234,567.8", -1_234_567.8, "#,##0.00"],
    ["$24,500", 24_500, "$#,##0"],
    ["-$9.50", -9.5, "$#,##0.00"],
    [" $ 12 ", 12, "$#,##0"],
  ])("%s", (typed, value, format) => {
    expect(parseTypedNumber(typed)).toEqual({ value, format });
  });

  it.each([
    "12",
    "12.5",
    "1,2",
    "12,34",
    "1,2345",
    "1, 1/2, 3/4",
    "6/12",
    "18' 6\"",
    "$",
    "12,500 lb",
    "1.234,50",
  ])("%s stays text", (typed) => {
    expect(parseTypedNumber(typed)).toBeUndefined();
  });
});

describe("a number typed into a cell with a percent format", () => {
  it.each([
    ["8", 0.08],
    [8, 0.08],
    ["-7.25", -0.0725],
    ["100", 1],
  ])("%p means that many percent", (typed, share) => {
    expect(typedPercent(typed, "0.00%")).toBe(share);
  });

  it.each(["0.08", "8%", "eight", "", null, true])("%p is unchanged", (typed) => {
    expect(typedPercent(typed, "0%")).toBeUndefined();
  });

  it("is unchanged in any other cell", () => {
    expect(typedPercent("8", "0.00")).toBeUndefined();
    expect(typedPercent("8", undefined)).toBeUndefined();
  });
});

describe("10% typed into a blank cell", () => {
  const entered = (fix: (injector: Injector, workbook: Workbook) => void): unknown => {
    const { univer, injector, workbook } = openedUniver([
      { name: "Sheet1", cells: [], columnWidths: [], rowHeights: {}, frozenRows: 0 },
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
      origin: undefined,
    };
    const cell = injector
      .get(SheetInterceptorService)
      .writeCellInterceptor.fetchThroughInterceptors(AFTER_CELL_EDIT)({ v: "10%" }, location);
    univer.dispose();
    return cell?.v;
  };

  it("is the number 0.1", () => {
    expect(entered(parseTypedNumbers)).toBe(0.1);
  });

  it("stays text without the fix", () => {
    expect(entered(() => undefined)).toBe("10%");
  });
});
