import { IUndoRedoService, type Injector, type Workbook } from "@univerjs/core";

/** The engine's undo steps by workbook. Its public methods answer only for what has the focus, such as the cell editor. */
interface UndoSteps {
  readonly _undoStacks: ReadonlyMap<string, readonly unknown[]>;
}

/**
 * The last edit that Undo would take back; null if there is none. Counting the steps isn't enough: the engine keeps only the last
 * twenty, and an edit after Undo makes as many as before.
 */
export const lastEdit = (injector: Injector, workbook: Workbook): unknown => {
  const { _undoStacks } = injector.get(IUndoRedoService) as unknown as UndoSteps;
  return _undoStacks.get(workbook.getUnitId())?.at(-1) ?? null;
};
