import { ICommandService } from "@univerjs/core";
import { SetFormulaCalculationStartMutation } from "@univerjs/engine-formula";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import type { CellInput } from "../../../../../src/hosts/local/engine/cellData";
import { createHeadlessEngine, type HeadlessEngine } from "../../../../../src/hosts/local/workbook/headless";
import type { SheetCellAddress } from "../../../../../src/workbook/address";
import { engineWithout } from "../engineWithout";
import { fakeCatalog } from "../fakeCatalog";
import { planOf } from "../planOf";

const opened = async (create: typeof createHeadlessEngine): Promise<HeadlessEngine> => {
  const cells = [3, "=A1*2", "=B1+1"].map((content, column) => ({ row: 0, column, content }));
  const made = create(fakeCatalog, planOf({ sheets: [{ name: "Bid", cells }], names: [] }));
  await made.calculated();
  return made;
};

let engine: HeadlessEngine;
beforeEach(async () => {
  engine = await opened(createHeadlessEngine);
});
afterEach(() => {
  engine.dispose();
});

const at = (column: number) => ({ sheet: "Bid", row: 0, column });

/** Sets a cell, calculates, and calls `act` as soon as the calculation has begun. */
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
  it("stays blank if its formula was deleted", async () => {
    await calculateDuring(() => {
      engine.setCell(at(1), null);
    });
    expect([0, 1, 2].map((column) => engine.getCell(at(column)))).toEqual([5, null, 1]);
  });

  it("keeps a value that was typed over its formula", async () => {
    await calculateDuring(() => {
      engine.setCell(at(1), 40);
    });
    expect([1, 2].map((column) => engine.getCell(at(column)))).toEqual([40, 41]);
  });

  it("gets the result of a formula that was typed over the old one", async () => {
    await calculateDuring(() => {
      engine.setCell(at(1), "=A1*3");
    });
    expect([1, 2].map((column) => engine.getCell(at(column)))).toEqual([15, 16]);
  });

  it.each([
    ["spills", 1],
    ["has no room to spill", 0],
  ])("leaves nothing of a table that %s if its formula was deleted", async (_, row) => {
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

  it("gets its result if only its format was changed", async () => {
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

test("without the fix, a deleted formula leaves its result behind", async () => {
  const {
    createHeadlessEngine: create,
    core,
    formulaEngine,
  } = engineWithout("lateResults", "dropLateResults");
  const unfixed = await opened(create);
  const stop = unfixed.injector.get(core.ICommandService).onCommandExecuted(({ id }) => {
    if (id !== formulaEngine.SetFormulaCalculationStartMutation.id) return;
    stop.dispose();
    unfixed.setCell(at(1), null);
  });
  unfixed.setCell(at(0), 5);
  await unfixed.calculated();
  await unfixed.calculated();
  expect(unfixed.getCell(at(1))).toBe(10);
  unfixed.dispose();
});
