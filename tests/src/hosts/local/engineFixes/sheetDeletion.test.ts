import { ICommandService, IUniverInstanceService, UndoCommand } from "@univerjs/core";
import {
  InsertSheetMutation,
  RemoveSheetCommand,
  RemoveSheetMutation,
  SetWorksheetActiveOperation,
} from "@univerjs/sheets";
import { localCatalog } from "../../../../../src/hosts/local/formulas/catalog";
import { createHeadlessEngine, type HeadlessEngine } from "../../../../../src/hosts/local/workbook/headless";
import { deleteSheetsCompletely } from "../../../../../src/hosts/local/engineFixes/sheetDeletion";
import { formula, number, type WorkbookPlan } from "../../../../../src/workbook/plan";

const remove = (engine: HeadlessEngine, sheet: string): Promise<boolean> =>
  engine.injector.get(ICommandService).executeCommand(RemoveSheetCommand.id, {
    unitId: engine.workbook.getUnitId(),
    subUnitId: engine.workbook.getSheetBySheetName(sheet)?.getSheetId(),
  });

const namesOf = ({ workbook }: HeadlessEngine): string[] =>
  workbook.getSheets().map((sheet) => sheet.getName());

const plan = (): WorkbookPlan => {
  const sheet = { columnWidths: [], rowHeights: {}, frozenRows: 0 };
  const three = { row: 0, column: 0, content: number(3) };
  const itself = { row: 1, column: 0, content: formula("='Prices'!A1") };
  const bid = { row: 0, column: 0, content: formula("='Prices'!A1*2") };
  return {
    sheets: [
      { ...sheet, name: "Prices", cells: [three, itself] },
      { ...sheet, name: "Bid", cells: [bid] },
    ],
    names: [],
  };
};

/** A workbook whose active sheet is Prices. */
const opened = async (): Promise<HeadlessEngine> => {
  const engine = createHeadlessEngine(localCatalog, plan());
  await engine.calculated();
  const { injector, workbook } = engine;
  injector.get(IUniverInstanceService).focusUnit(workbook.getUnitId());
  return engine;
};

const A1_OF_BID = { sheet: "Bid", row: 0, column: 0 };

test("before the active sheet is deleted another becomes active; formulas that read it show #REF!, and Undo restores it", async () => {
  const engine = await opened();
  const { injector, workbook } = engine;
  deleteSheetsCompletely(injector, workbook);
  const commands = injector.get(ICommandService);
  const steps: string[] = [];
  commands.onCommandExecuted(({ id }) => {
    if ([RemoveSheetMutation.id, SetWorksheetActiveOperation.id, InsertSheetMutation.id].includes(id))
      steps.push(id);
  });

  expect(workbook.getActiveSheet().getName()).toBe("Prices");
  await remove(engine, "Prices");
  await engine.calculated();
  expect(steps).toEqual([SetWorksheetActiveOperation.id, RemoveSheetMutation.id]);
  expect(engine.getCell(A1_OF_BID)).toMatchObject({ code: "#REF!" });

  await commands.executeCommand(UndoCommand.id);
  await engine.calculated();
  expect(namesOf(engine)).toEqual(["Prices", "Bid"]);
  expect(engine.getCell(A1_OF_BID)).toBe(6);
  expect(engine.getCell({ sheet: "Prices", row: 1, column: 0 })).toBe(3);
  engine.dispose();
});

test("without the fix, deleting a sheet that refers to itself stops halfway", async () => {
  const engine = await opened();
  await remove(engine, "Prices");
  await engine.calculated();
  expect(namesOf(engine)).toEqual(["Bid"]);
  expect(engine.getCell(A1_OF_BID)).toBe(6);
  await engine.injector.get(ICommandService).executeCommand(UndoCommand.id);
  expect(namesOf(engine)).toEqual(["Bid"]);
  engine.dispose();
});
