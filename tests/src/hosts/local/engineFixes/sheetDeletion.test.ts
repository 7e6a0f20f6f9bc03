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

it("a sheet in front that is deleted is left first; what reads it says so, and Undo brings it back", async () => {
  const engine = createHeadlessEngine(localCatalog, plan());
  await engine.calculated();
  const { injector, workbook } = engine;
  injector.get(IUniverInstanceService).focusUnit(workbook.getUnitId());
  deleteSheetsCompletely(injector, workbook);
  const commands = injector.get(ICommandService);
  const steps: string[] = [];
  commands.onCommandExecuted(({ id }) => {
    if ([RemoveSheetMutation.id, SetWorksheetActiveOperation.id, InsertSheetMutation.id].includes(id))
      steps.push(id);
  });
  const a1 = { sheet: "Bid", row: 0, column: 0 };

  expect(workbook.getActiveSheet().getName()).toBe("Prices");
  await remove(engine, "Prices");
  await engine.calculated();
  expect(steps).toEqual([SetWorksheetActiveOperation.id, RemoveSheetMutation.id]);
  expect(engine.getCell(a1)).toMatchObject({ code: "#REF!" });

  await commands.executeCommand(UndoCommand.id);
  await engine.calculated();
  expect(namesOf(engine)).toEqual(["Prices", "Bid"]);
  expect(engine.getCell(a1)).toBe(6);
  expect(engine.getCell({ sheet: "Prices", row: 1, column: 0 })).toBe(3);
  engine.dispose();
});
