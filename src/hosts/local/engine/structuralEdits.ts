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
  /** The command that it is a step of. */
  readonly trigger?: string;
}

/** What puts whole rows or columns in, or takes them out: what Undo does to the one is the other. */
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

/** The sheets that a move takes cells from or brings them to. */
export const sheetIdsOfStructuralEdit = (params: object | undefined): string[] => {
  const { subUnitId, from, to } = (params ?? {}) as StructuralEditParams;
  const ids = new Set([subUnitId, from?.subUnitId, to?.subUnitId]);
  return [...ids].filter((id) => id !== undefined);
};

type Step = RowColumnMove | "scattered";

/** What a step of the engine moves. */
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

const withStep = (steps: readonly Step[], step: Step, isTakenBack: boolean): Step[] =>
  isTakenBack && isOpposite(steps.at(-1), step) ? steps.slice(0, -1) : [...steps, step];

/**
 * What was moved in the end: rows and columns that were put in can be taken out again by hand. What was taken out, or moved
 * about, comes back by Undo only: a blank row in its place is another row, without the comments of the old one.
 */
const netSteps = (steps: readonly Step[]): Step[] =>
  steps.reduce<Step[]>((left, step) => withStep(left, step, step !== "scattered" && step.count < 0), []);

const isLineMovesOnly = (steps: readonly Step[]): steps is readonly RowColumnMove[] =>
  !steps.includes("scattered");

/** Watches what was moved on which sheets, other than there and back. */
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
