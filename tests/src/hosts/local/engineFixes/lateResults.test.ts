import { ICommandService } from "@univerjs/core";
import { SetFormulaCalculationStartMutation } from "@univerjs/engine-formula";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import type { CellInput } from "../../../../../src/hosts/local/engine/cellData";
import { createHeadlessEngine, type HeadlessEngine } from "../../../../../src/hosts/local/workbook/headless";
import type { SheetCellAddress } from "../../../../../src/workbook/address";
import { fakeCatalog } from "../fakeCatalog";
import { planOf } from "../planOf";

let engine: HeadlessEngine;
beforeEach(async () => {
  const cells = [3, "=A1*2", "=B1+1"].map((content, column) => ({ row: 0, column, content }));
  engine = createHeadlessEngine(fakeCatalog, planOf({ sheets: [{ name: "Bid", cells }], names: [] }));
  await engine.calculated();
});
afterEach(() => {
  engine.dispose();
});

const at = (column: number) => ({ sheet: "Bid", row: 0, column });

/** Sets a cell, calculates, and does something as soon as the calculation has begun. */
const calculateDuring = async (
  act: () => void,
  set: { readonly cell: SheetCellAddress; readonly content: CellInput } = { cell: at(0), content: 5 },
): Promise<void> => {
  const stop = engine.injector.get(ICommandService).onCommandExecuted(({ id }) => {
    if (id !== SetFormulaCalculationStartMutation.id) return;
    stop.dispose();
    act();
  });
  engine.setCell(set.cell, set.content);
  await engine.calculated();
  await engine.calculated();
};

describe("a cell that is edited while the engine calculates", () => {
  it("stays blank where its formula was taken away", async () => {
    await calculateDuring(() => {
      engine.setCell(at(1), null);
    });
    expect([0, 1, 2].map((column) => engine.getCell(at(column)))).toEqual([5, null, 1]);
  });

  it("keeps the value that was typed over its formula", async () => {
    await calculateDuring(() => {
      engine.setCell(at(1), 40);
    });
    expect([1, 2].map((column) => engine.getCell(at(column)))).toEqual([40, 41]);
  });

  it("takes the result of the formula that was typed over the other", async () => {
    await calculateDuring(() => {
      engine.setCell(at(1), "=A1*3");
    });
    expect([1, 2].map((column) => engine.getCell(at(column)))).toEqual([15, 16]);
  });

  it.each([
    ["stands", 1],
    ["has no room", 0],
  ])("leaves nothing of a table that %s where its formula was taken away", async (_, row) => {
    const table = { sheet: "Bid", row, column: 0 };
    await calculateDuring(
      () => {
        engine.setCell(table, null);
      },
      { cell: table, content: "=GABLE.COURSES(3)" },
    );
    const below = [1, 2, 3].map((row) => engine.getCell({ sheet: "Bid", row, column: 0 }));
    expect([engine.getCell(table), ...below]).toEqual([null, null, null, null]);
    expect([1, 2].map((column) => engine.getCell(at(column)))).toEqual(row === 0 ? [0, 1] : [6, 7]);
  });

  it("takes its result where only its look was changed", async () => {
    await calculateDuring(() =>
      engine.injector.get(ICommandService).syncExecuteCommand(SetRangeValuesMutation.id, {
        unitId: engine.workbook.getUnitId(),
        subUnitId: engine.workbook.getActiveSheet().getSheetId(),
        cellValue: { 0: { 1: { s: { bl: 1 } } } },
      }),
    );
    expect([1, 2].map((column) => engine.getCell(at(column)))).toEqual([10, 11]);
  });
});
