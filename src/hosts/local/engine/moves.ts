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
import type { LineMove, SheetMoves } from "../../../xlsx/book/lineMoves";

interface MoveParams {
  readonly subUnitId?: string;
  readonly range?: { startRow: number; endRow: number; startColumn: number; endColumn: number };
  readonly from?: { readonly subUnitId: string };
  readonly to?: { readonly subUnitId: string };
  /** The command that it is a step of. */
  readonly trigger?: string;
}

/** What puts whole rows or columns in, or takes them out: what Undo does to the one is the other. */
const LINES = new Map<string, { readonly axis: LineMove["axis"]; readonly sign: 1 | -1 }>([
  [InsertRowMutation.id, { axis: "row", sign: 1 }],
  [RemoveRowMutation.id, { axis: "row", sign: -1 }],
  [InsertColMutation.id, { axis: "column", sign: 1 }],
  [RemoveColMutation.id, { axis: "column", sign: -1 }],
]);

const MOVES = new Set([
  ...LINES.keys(),
  MoveRowsMutation.id,
  MoveColsMutation.id,
  MoveRangeMutation.id,
  ReorderRangeMutation.id,
]);

export const isMove = (commandId: string): boolean => MOVES.has(commandId);

/** The sheets that a move takes cells from or brings them to. */
export const movedSheetIdsOf = (params: object | undefined): string[] => {
  const { subUnitId, from, to } = (params ?? {}) as MoveParams;
  const ids = new Set([subUnitId, from?.subUnitId, to?.subUnitId]);
  return [...ids].filter((id) => id !== undefined);
};

type Step = LineMove | "scattered";

/** What a step of the engine moves. */
const stepOf = (id: string, { range }: MoveParams): Step => {
  const lines = LINES.get(id);
  if (!lines || !range) return "scattered";
  const [at, last] =
    lines.axis === "row" ? [range.startRow, range.endRow] : [range.startColumn, range.endColumn];
  return { axis: lines.axis, at, count: lines.sign * (last - at + 1) };
};

const isOpposite = (last: Step | undefined, step: Step): boolean => {
  if (step === "scattered" || last === "scattered") return last === step;
  return last?.axis === step.axis && last.at === step.at && last.count === -step.count;
};

const taken = (steps: readonly Step[], step: Step, isTakenBack: boolean): Step[] =>
  isTakenBack && isOpposite(steps.at(-1), step) ? steps.slice(0, -1) : [...steps, step];

/**
 * What was moved in the end: rows and columns that were put in can be taken out again by hand. What was taken out, or moved
 * about, comes back by Undo only: a blank row in its place is another row, without the comments of the old one.
 */
const inTheEnd = (steps: readonly Step[]): Step[] =>
  steps.reduce<Step[]>((left, step) => taken(left, step, step !== "scattered" && step.count < 0), []);

const isFollowed = (steps: readonly Step[]): steps is readonly LineMove[] => !steps.includes("scattered");

/** Watches what was moved on which sheets, other than there and back. */
export const watchMoves = (commands: ICommandService): (() => ReadonlyMap<string, SheetMoves>) => {
  const stepsBySheet = new Map<string, Step[]>();
  commands.onCommandExecuted(({ id, params = {} }) => {
    if (!isMove(id)) return;
    const step = stepOf(id, params);
    for (const sheetId of movedSheetIdsOf(params)) {
      const isUndone = (params as MoveParams).trigger === UndoCommand.id;
      stepsBySheet.set(sheetId, taken(stepsBySheet.get(sheetId) ?? [], step, isUndone));
    }
  });
  return () =>
    new Map(
      [...stepsBySheet]
        .map(([sheetId, steps]) => [sheetId, inTheEnd(steps)] as const)
        .filter(([, steps]) => steps.length > 0)
        .map(([sheetId, steps]) => [sheetId, isFollowed(steps) ? steps : "scattered"]),
    );
};
