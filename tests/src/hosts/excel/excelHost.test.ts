import { excelHost } from "../../../../src/hosts/excel/excelHost";
import type { Host } from "../../../../src/hosts/host";
import { addTakeOff, chooseSheetNames } from "../../../../src/sheets/takeOff/addTakeOff";
import { DEMO_TAKE_OFF } from "../../../../src/sheets/takeOff/demo";
import { BLANK_TAKE_OFF } from "../../../../src/sheets/takeOff/options";
import { takeOffPlan, USUAL_NAMES } from "../../../../src/sheets/takeOff/takeOff";
import { a1 } from "../../../../src/sheets/address";
import { text } from "../../../../src/sheets/plan";
import { fakeExcel, fakeWorkbook, type FakeWorkbook } from "../../../support/fakeExcel";

const hostOf = (workbook: FakeWorkbook): Host =>
  excelHost(fakeExcel(workbook), () => Promise.reject(new Error("no picture was to be inserted")));

const stateOf = (workbook: FakeWorkbook): string =>
  JSON.stringify([
    workbook.sheets.map((sheet) => [sheet.id, sheet.name, [...sheet.cells]]),
    [...workbook.names],
    workbook.active,
  ]);

describe("the Excel host, on a stand-in", () => {
  it("writes every cell, name, format and drop-down of a plan", async () => {
    const workbook = fakeWorkbook("Bid");
    await addTakeOff(hostOf(workbook), DEMO_TAKE_OFF);
    const plan = takeOffPlan(DEMO_TAKE_OFF, USUAL_NAMES);
    expect(workbook.sheets.map(({ name }) => name)).toEqual(["Bid", "Take-off", "Panel"]);
    expect(workbook.active).toBe("Take-off");
    for (const sheetPlan of plan.sheets) {
      const sheet = workbook.sheets.find(({ name }) => name === sheetPlan.name);
      expect(sheet?.frozenRows).toBe(sheetPlan.frozenRows);
      for (const cell of sheetPlan.cells) {
        const written = sheet?.cells.get(a1(cell));
        if (cell.content?.kind === "formula") expect(written?.formula).toBe(cell.content.formula);
        if (cell.content?.kind === "number") expect(written?.formula).toBe(cell.content.number);
        if (cell.content?.kind === "text")
          expect(String(written?.formula).replace(/^'/, "")).toBe(cell.content.text);
        expect(written?.numberFormat).toBe(cell.numberFormat);
        expect(written?.choices).toBe(cell.choices?.join(","));
      }
    }
    expect([...workbook.names.keys()].sort()).toEqual(plan.names.map(({ name }) => name).sort());
    expect(workbook.names.get("Panel")).toMatch(/^Panel!\$A\$4:\$B\$\d+$/);
  });

  it("leaves the workbook as it was, whichever operation fails", async () => {
    let failures = 0;
    for (let failAfter = 0; ; failAfter++) {
      const workbook = fakeWorkbook("Bid", "Take-off");
      workbook.sheets[1]?.cells.set("A1", { formula: "mine" });
      const before = stateOf(workbook);
      workbook.failAfter = failAfter;
      const failed = await addTakeOff(hostOf(workbook), BLANK_TAKE_OFF).then(
        () => false,
        () => true,
      );
      if (!failed) break;
      failures++;
      expect(stateOf(workbook)).toBe(before);
    }
    expect(failures).toBeGreaterThan(500);
  });

  it("never lets text become a formula, a date or a number", async () => {
    const workbook = fakeWorkbook();
    const risky = ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "6:12", "1/2", "007", "TRUE"];
    await hostOf(workbook).write({
      names: [],
      sheets: [
        {
          name: "Notes",
          frozenRows: 0,
          columnWidths: [],
          rowHeights: {},
          cells: risky.map((each, row) => ({ row, column: 0, content: text(each) })),
        },
      ],
    });
    expect([...(workbook.sheets[0]?.cells.values() ?? [])].map(({ formula }) => formula)).toEqual(
      risky.map((each) => `'${each}`),
    );
  });
});

describe("names of new sheets", () => {
  it("steps aside for sheets that are there, letter case aside", () => {
    expect(chooseSheetNames({ sheets: ["take-off", "Take-off 2"], names: [] })).toEqual({
      takeOff: "Take-off 3",
      panel: "Panel",
    });
  });

  it("uses the panel sheet that a workbook has", () => {
    const names = takeOffPlan(BLANK_TAKE_OFF, USUAL_NAMES).names.map(({ name }) => name);
    expect(chooseSheetNames({ sheets: ["Panel"], names })).toEqual({ takeOff: "Take-off", panel: undefined });
  });

  it("refuses a workbook in which a name means something else", () => {
    expect(() => chooseSheetNames({ sheets: [], names: ["TRIMLAP"] })).toThrow(
      "This workbook uses the name TrimLap for something else.",
    );
  });
});
