import { ICommandService, IUniverInstanceService, RedoCommand, UndoCommand } from "@univerjs/core";
import {
  InsertRowMutation,
  MoveRangeCommand,
  MoveRangeMutation,
  RemoveColMutation,
  RemoveRowMutation,
  SetRangeValuesMutation,
} from "@univerjs/sheets";
import { createHeadlessEngine } from "../../../../../src/hosts/local/workbook/headless";
import { watchStructuralEdits } from "../../../../../src/hosts/local/engine/structuralEdits";
import { bookOf } from "../../../xlsx/bookOf";

/** A stand-in for the engine's commands, which the test runs. */
const commands = () => {
  const listeners: ((command: { id: string; params: object }) => void)[] = [];
  const moved = watchStructuralEdits({
    onCommandExecuted: (listener: (typeof listeners)[number]) => listeners.push(listener),
  } as unknown as ICommandService);
  const run = (id: string, params: object): void => {
    for (const listener of listeners) listener({ id, params });
  };
  return { moved, run };
};

const rows = (startRow: number, endRow: number) => ({
  subUnitId: "bid",
  range: { startRow, endRow, startColumn: 0, endColumn: 25 },
});

test("an edit moves nothing", () => {
  const { moved, run } = commands();
  run(SetRangeValuesMutation.id, { subUnitId: "bid" });
  expect([...moved()]).toEqual([]);
});

test("inserting rows and deleting them again moves nothing", () => {
  const { moved, run } = commands();
  run(InsertRowMutation.id, rows(3, 4));
  expect([...moved()]).toEqual([["bid", [{ axis: "row", at: 3, count: 2 }]]]);
  run(RemoveRowMutation.id, rows(3, 4));
  expect([...moved()]).toEqual([]);
});

test("deleting other rows doesn't cancel an insertion", () => {
  const { moved, run } = commands();
  run(InsertRowMutation.id, rows(3, 4));
  run(RemoveRowMutation.id, rows(5, 6));
  expect([...moved()]).toEqual([
    [
      "bid",
      [
        { axis: "row", at: 3, count: 2 },
        { axis: "row", at: 5, count: -2 },
      ],
    ],
  ]);
});

test("a blank row inserted in place of a deleted one is another row; Undo restores the old one", () => {
  const { moved, run } = commands();
  run(RemoveRowMutation.id, rows(3, 3));
  run(InsertRowMutation.id, rows(3, 3));
  expect([...moved()]).toEqual([
    [
      "bid",
      [
        { axis: "row", at: 3, count: -1 },
        { axis: "row", at: 3, count: 1 },
      ],
    ],
  ]);
  // Deleting the new row and undoing that restores the new row, not the old one.
  run(RemoveRowMutation.id, rows(3, 3));
  run(InsertRowMutation.id, { ...rows(3, 3), trigger: UndoCommand.id });
  expect(moved().get("bid")).toHaveLength(2);
  run(RemoveRowMutation.id, { ...rows(3, 3), trigger: UndoCommand.id });
  run(InsertRowMutation.id, { ...rows(3, 3), trigger: UndoCommand.id });
  expect([...moved()]).toEqual([]);
});

test("columns count like rows", () => {
  const { moved, run } = commands();
  run(RemoveColMutation.id, {
    subUnitId: "bid",
    range: { startRow: 0, endRow: 9, startColumn: 2, endColumn: 2 },
  });
  expect([...moved()]).toEqual([["bid", [{ axis: "column", at: 2, count: -1 }]]]);
});

test("a block that Undo moved back counts as unmoved, and as moved after Redo", () => {
  const { moved, run } = commands();
  const block = { from: { subUnitId: "bid" }, to: { subUnitId: "bid" } };
  run(MoveRangeMutation.id, block);
  run(MoveRangeMutation.id, { ...block, trigger: "sheet.command.move-range" });
  run(MoveRangeMutation.id, { ...block, trigger: UndoCommand.id });
  expect([...moved()]).toEqual([["bid", "scattered"]]);
  run(MoveRangeMutation.id, { ...block, trigger: UndoCommand.id });
  expect([...moved()]).toEqual([]);
  run(MoveRangeMutation.id, { ...block, trigger: RedoCommand.id });
  expect([...moved()]).toEqual([["bid", "scattered"]]);
});

test("a block moved from one sheet to another counts for both", () => {
  const { moved, run } = commands();
  run(MoveRangeMutation.id, { from: { subUnitId: "bid" }, to: { subUnitId: "prices" } });
  expect([...moved()].sort()).toEqual([
    ["bid", "scattered"],
    ["prices", "scattered"],
  ]);
});

test("after the engine's own Undo of a moved block nothing is moved", async () => {
  const { injector, workbook, dispose } = createHeadlessEngine([], bookOf({ A1: { value: "eave" } }));
  const unitId = workbook.getUnitId();
  injector.get(IUniverInstanceService).focusUnit(unitId);
  const engineCommands = injector.get(ICommandService);
  const moved = watchStructuralEdits(engineCommands);
  const cell = (row: number) => ({ startRow: row, endRow: row, startColumn: 0, endColumn: 0 });
  const subUnitId = workbook.getActiveSheet().getSheetId();
  await engineCommands.executeCommand(MoveRangeCommand.id, { fromRange: cell(0), toRange: cell(5) });
  expect([...moved()]).toEqual([[subUnitId, "scattered"]]);
  await engineCommands.executeCommand(UndoCommand.id);
  expect([...moved()]).toEqual([]);
  dispose();
});
