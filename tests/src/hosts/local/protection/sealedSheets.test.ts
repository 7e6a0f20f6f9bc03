import {
  CommandType,
  ICommandService,
  IUniverInstanceService,
  RedoCommand,
  Tools,
  UndoCommand,
} from "@univerjs/core";
import { InsertSheetCommand, RemoveSheetCommand, SetWorksheetNameCommand } from "@univerjs/sheets";
import type { HeadlessEngine } from "../../../../../src/hosts/local/workbook/headless";
import { protectSealedSheets } from "../../../../../src/hosts/local/protection/sealedSheets";
import { deleteSheetsCompletely } from "../../../../../src/hosts/local/engineFixes/sheetDeletion";
import { issueSealAddress } from "../../../../../src/sheets/changeOrder/seals";
import { number, text } from "../../../../../src/workbook/plan";
import { changedOrder, issue } from "../../../../support/changedOrder";

/** What stands for the command that opens a tab: it is part of what is drawn. */
const OPEN_TAB = "open-tab";

/** What is said from now on about what stays; `shown` hears of the names that tabs show again. */
const keep = (engine: HeadlessEngine, shown: (name: string) => void = () => undefined): string[] => {
  const told: string[] = [];
  protectSealedSheets(engine.injector, engine.workbook, {
    deletionId: RemoveSheetCommand.id,
    renameId: OPEN_TAB,
    restoreTabName: (sheet) => {
      shown(sheet.getName());
    },
    read: (sheet, row, column) => engine.getCell({ sheet: sheet.getName(), row, column }),
    tell: (message) => told.push(message),
  });
  engine.injector.get(IUniverInstanceService).focusUnit(engine.workbook.getUnitId());
  return told;
};

const namesOf = ({ workbook }: HeadlessEngine): string[] =>
  workbook.getSheets().map((sheet) => sheet.getName());

const run = (engine: HeadlessEngine, id: string, params?: object): Promise<boolean> =>
  engine.injector.get(ICommandService).executeCommand(id, params);

const remove = (engine: HeadlessEngine, sheet: string): Promise<boolean> =>
  run(engine, RemoveSheetCommand.id, {
    unitId: engine.workbook.getUnitId(),
    subUnitId: engine.workbook.getSheetBySheetName(sheet)?.getSheetId(),
  });

it.each([
  ["issued", true, ["Signed 1", "Change order 1", "Signed 2"]],
  ["not issued yet", false, ["Signed 1", "Signed 2"]],
])(
  "by hand, with a change order %s, what is sealed isn't deleted; the rest is",
  async (_, isIssued, kept) => {
    const bid = await changedOrder(["panels", 10, 5]);
    if (isIssued) await issue(bid, "Change order 1");
    const engine = await bid.calculated();
    deleteSheetsCompletely(engine.injector, engine.workbook);
    const told = keep(engine);
    for (const sheet of namesOf(engine)) await remove(engine, sheet);
    expect(namesOf(engine)).toEqual(kept);
    expect(told).toEqual(
      kept.map(
        (sheet) =>
          `"${sheet}" is ${sheet.startsWith("Signed") ? "signed" : "issued"}, so it wasn't deleted. You can hide it instead.`,
      ),
    );
    bid.dispose();
  },
);

it("a sealed sheet can't be renamed, and its tab shows its own name again; other sheets can", async () => {
  const bid = await changedOrder(["panels", 10, 5]);
  const engine = await bid.calculated();
  const shown: string[] = [];
  const told = keep(engine, (name) => shown.push(name));
  const names = namesOf(engine);
  for (const sheet of names)
    await run(engine, SetWorksheetNameCommand.id, {
      subUnitId: engine.workbook.getSheetBySheetName(sheet)?.getSheetId(),
      name: `${sheet}, once`,
    });
  expect(namesOf(engine)).toEqual(
    names.map((sheet) => (sheet.startsWith("Signed") ? sheet : `${sheet}, once`)),
  );
  expect(shown).toEqual(["Signed 1", "Signed 2"]);
  expect(told).toEqual(
    shown.map((sheet) => `"${sheet}" is signed, so it keeps its name: other sheets refer to it by name.`),
  );

  // Before anything is typed.
  const opened = jest.fn(() => true);
  engine.injector
    .get(ICommandService)
    .registerCommand({ id: OPEN_TAB, type: CommandType.OPERATION, handler: opened });
  const subUnitId = engine.workbook.getSheetBySheetName("Signed 1")?.getSheetId();
  expect(await run(engine, OPEN_TAB, { subUnitId })).toBe(false);
  expect(opened).not.toHaveBeenCalled();
  expect(told).toHaveLength(3);
  bid.dispose();
});

const MISTAKE = "If it was made by mistake, use Undo on the card that made it.";

it("Undo doesn't remove the seal of an issued change order, but does undo other edits of it", async () => {
  const bid = await changedOrder(["panels", 10, 5]);
  const engine = await bid.calculated();
  const told = keep(engine);
  const sheet = "Change order 1";
  const contents = engine.contents().sheets.get(sheet);
  const place = contents && issueSealAddress({ contents });
  if (!place) throw new Error("It has no place for its seal.");
  const seal = { sheet, ...place };
  const reason = { ...seal, row: seal.row + 2 };

  await engine.putCells({ sheet, at: seal, cells: [[{ content: number(4711) }]] });
  await engine.putCells({ sheet, at: reason, cells: [[{ content: text("a longer eave") }]] });
  await run(engine, UndoCommand.id);
  expect(engine.getCell(reason)).toBeNull();
  expect(told).toEqual([]);

  await run(engine, UndoCommand.id);
  expect(engine.getCell(seal)).toBe(4711);
  expect(told).toEqual([
    `That would remove the seal of "${sheet}", which is issued. Nothing was changed. ${MISTAKE}`,
  ]);
  bid.dispose();
});

it("Undo and Redo don't delete a signed sheet, but do delete another", async () => {
  const bid = await changedOrder(["panels", 10, 5]);
  const engine = await bid.calculated();
  deleteSheetsCompletely(engine.injector, engine.workbook);
  const names = namesOf(engine);
  await remove(engine, "Signed 1");
  const told = keep(engine);
  await run(engine, UndoCommand.id);
  expect(namesOf(engine)).toEqual(names);

  await run(engine, RedoCommand.id);
  expect(namesOf(engine)).toEqual(names);
  expect(told).toEqual([`That would remove "Signed 1", which is signed. Nothing was changed. ${MISTAKE}`]);

  const add = (name: string, like: string): Promise<boolean> =>
    run(engine, InsertSheetCommand.id, {
      unitId: engine.workbook.getUnitId(),
      sheet: {
        ...Tools.deepClone(engine.workbook.getSheetBySheetName(like)?.getConfig()),
        id: name,
        name,
      },
    });
  await add("Other", "Order");
  await run(engine, UndoCommand.id);
  expect(namesOf(engine)).toEqual(names);

  await add("Signed 3", "Signed 1");
  await engine.calculated();
  await run(engine, UndoCommand.id);
  expect(namesOf(engine)).toEqual([...names, "Signed 3"]);
  expect(told.at(-1)).toBe(`That would remove "Signed 3", which is signed. Nothing was changed. ${MISTAKE}`);
  bid.dispose();
});
