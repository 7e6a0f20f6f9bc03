import { UndoCommand, type ICommandService } from "@univerjs/core";
import {
  InsertColMutation,
  InsertRowMutation,
  MoveColsMutation,
  MoveRangeMutation,
  MoveRowsMutation,
  RemoveColMutation,
  RemoveRowMutation,
  ReorderRangeMutation,
} from "@univerjs/sheets";
import type { RowColumnMove, SheetMoves } from "../../../xlsx/book/rowColumnMoves";

interface StructuralEditParams {
  readonly subUnitId?: string;
  readonly range?: { startRow: number; endRow: number; startColumn: number; endColumn: number };
  readonly from?: { readonly subUnitId: string };
  readonly to?: { readonly subUnitId: string };
  /** The command that it belongs to. */
  readonly trigger?: string;
}

/** Mutations that insert or delete whole rows or columns. Each is the Undo of its opposite. */
const LINE_MUTATIONS = new Map<string, { readonly axis: RowColumnMove["axis"]; readonly sign: 1 | -1 }>([
  [InsertRowMutation.id, { axis: "row", sign: 1 }],
  [RemoveRowMutation.id, { axis: "row", sign: -1 }],
  [InsertColMutation.id, { axis: "column", sign: 1 }],
  [RemoveColMutation.id, { axis: "column", sign: -1 }],
]);

const STRUCTURAL_EDITS = new Set([
  ...LINE_MUTATIONS.keys(),
  MoveRowsMutation.id,
  MoveColsMutation.id,
  MoveRangeMutation.id,
  ReorderRangeMutation.id,
]);

export const isStructuralEdit = (commandId: string): boolean => STRUCTURAL_EDITS.has(commandId);

/** The sheets whose cells a structural edit moves. */
export const sheetIdsOfStructuralEdit = (params: object | undefined): string[] => {
  const { subUnitId, from, to } = (params ?? {}) as StructuralEditParams;
  const ids = new Set([subUnitId, from?.subUnitId, to?.subUnitId]);
  return [...ids].filter((id) => id !== undefined);
};

type Step = RowColumnMove | "scattered";

/** What a mutation of the engine moves. */
const stepOf = (id: string, { range }: StructuralEditParams): Step => {
  const lines = LINE_MUTATIONS.get(id);
  if (!lines || !range) return "scattered";
  const [at, last] =
    lines.axis === "row" ? [range.startRow, range.endRow] : [range.startColumn, range.endColumn];
  return { axis: lines.axis, at, count: lines.sign * (last - at + 1) };
};

const isOpposite = (last: Step | undefined, step: Step): boolean => {
  if (step === "scattered" || last === "scattered") return last === step;
  return last?.axis === step.axis && last.at === step.at && last.count === -step.count;
};

const withStep = (steps: readonly Step[], step: Step, isUndo: boolean): Step[] =>
  isUndo && isOpposite(steps.at(-1), step) ? steps.slice(0, -1) : [...steps, step];

/**
 * The edits that remain. Deleting inserted rows or columns cancels the insertion. Deleted or moved cells come back only by Undo: a
 * blank row inserted in place of a deleted one is another row, without the old one's comments.
 */
const netSteps = (steps: readonly Step[]): Step[] =>
  steps.reduce<Step[]>((left, step) => withStep(left, step, step !== "scattered" && step.count < 0), []);

const isLineMovesOnly = (steps: readonly Step[]): steps is readonly RowColumnMove[] =>
  !steps.includes("scattered");

/** Watches rows, columns and blocks that are inserted, deleted or moved, by sheet id; edits that cancel each other don't count. */
export const watchStructuralEdits = (commands: ICommandService): (() => ReadonlyMap<string, SheetMoves>) => {
  const stepsBySheet = new Map<string, Step[]>();
  commands.onCommandExecuted(({ id, params = {} }) => {
    if (!isStructuralEdit(id)) return;
    const step = stepOf(id, params);
    for (const sheetId of sheetIdsOfStructuralEdit(params)) {
      const isUndone = (params as StructuralEditParams).trigger === UndoCommand.id;
      stepsBySheet.set(sheetId, withStep(stepsBySheet.get(sheetId) ?? [], step, isUndone));
    }
  });
  return () =>
    new Map(
      [...stepsBySheet]
        .map(([sheetId, steps]) => [sheetId, netSteps(steps)] as const)
        .filter(([, steps]) => steps.length > 0)
        .map(([sheetId, steps]) => [sheetId, isLineMovesOnly(steps) ? steps : "scattered"]),
    );
};
