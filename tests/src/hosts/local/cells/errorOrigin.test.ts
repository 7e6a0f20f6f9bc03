import { ICommandService } from "@univerjs/core";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import { localCatalog } from "../../../../../src/hosts/local/formulas/catalog";
import { errorOrigin } from "../../../../../src/hosts/local/cells/errorOrigin";
import { createHeadlessEngine } from "../../../../../src/hosts/local/workbook/headless";
import { readEnteredContents } from "../../../../../src/hosts/local/cells/enteredContents";
import { readArea } from "../../../../../src/workbook/address";
import { formula, text, type CellContent } from "../../../../../src/workbook/plan";

const CELLS: Readonly<Record<string, CellContent>> = {
  A1: formula("=1/0"),
  A2: text("ridge"),
  B1: formula("=SUM(A1:A2)"),
  B2: formula("=B1*2"),
  C1: formula('=MATCH("hip",A1:A2,0)'),
  C2: formula("=C1+1"),
  D1: formula('=GABLE.RAFTERFACTOR("steep")'),
  D2: formula("=SUM(D1:D1)"),
  E1: formula("=Divided+1"),
  E2: formula("=SUM(A:A)"),
};
const DIVIDED = "The formula divides by 0 or by a blank cell.";
const NOT_FOUND = "The formula can't find a value that it needs.";

describe("the message of an error", () => {
  const engine = createHeadlessEngine(localCatalog, {
    sheets: [
      {
        name: "Sheet1",
        cells: Object.entries(CELLS).map(([address, content]) => ({ ...readArea(address).from, content })),
        columnWidths: [],
        rowHeights: {},
        frozenRows: 0,
      },
    ],
    names: [{ name: "Divided", sheet: "Sheet1", range: "$A$1" }],
  });
  beforeAll(() => engine.calculated());
  afterAll(() => {
    engine.dispose();
  });

  const said = (address: string): string =>
    errorOrigin(
      engine.injector,
      engine.workbook,
      (sheet, row, column) => engine.getCell({ sheet: sheet.getName(), row, column }),
      { sheet: engine.workbook.getActiveSheet(), ...readArea(address).from },
    );

  it("says what it means, and which cell it comes from", () => {
    expect(said("A1")).toBe(DIVIDED);
    expect(said("B2")).toBe(`Comes from A1: ${DIVIDED}`);
    expect(said("A2")).toBe("");
  });

  it("is found through a defined name and a whole column", () => {
    expect(said("E1")).toBe(`Comes from A1: ${DIVIDED}`);
    expect(said("E2")).toBe(`Comes from A1: ${DIVIDED}`);
  });

  it("is its function's own message, if there is one", () => {
    expect(said("D2")).toMatch(/^Comes from D1: pitch takes a pitch .*got "steep"$/);
  });

  it("isn't the one of another error in a block that the formula searches", () => {
    expect(said("C1")).toBe(NOT_FOUND);
    expect(said("C2")).toBe(`Comes from C1: ${NOT_FOUND}`);
  });

  it("is found through a cell that shares its neighbor's formula after a fill", async () => {
    const filled = { 4: { 0: { f: "=B1*2", si: "fill" } }, 5: { 0: { si: "fill" } } };
    await engine.injector.get(ICommandService).executeCommand(SetRangeValuesMutation.id, {
      unitId: engine.workbook.getUnitId(),
      subUnitId: engine.workbook.getActiveSheet().getSheetId(),
      cellValue: filled,
    });
    await engine.calculated();
    expect(said("A6")).toBe(`Comes from A1: ${DIVIDED}`);
    expect(readEnteredContents(engine.injector, engine.workbook).sheets.get("Sheet1")?.get("A6")).toBe(
      "=B2*2",
    );
  });
});
