import type { ICommandService } from "@univerjs/core";
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
import type { LineMove, SheetMoves } from "../xlsx/lineMoves";

interface MoveParams {
  readonly subUnitId?: string;
  readonly range?: { startRow: number; endRow: number; startColumn: number; endColumn: number };
  readonly from?: { readonly subUnitId: string };
  readonly to?: { readonly subUnitId: string };
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

/** A step of the engine as whole rows or columns that come or go, where it is that. */
const lineMove = (id: string, { range }: MoveParams): LineMove | undefined => {
  const lines = LINES.get(id);
  if (!lines || !range) return undefined;
  const [at, last] =
    lines.axis === "row" ? [range.startRow, range.endRow] : [range.startColumn, range.endColumn];
  return { axis: lines.axis, at, count: lines.sign * (last - at + 1) };
};

const isTakenBack = (last: LineMove | undefined, move: LineMove | undefined): boolean =>
  last !== undefined && last.axis === move?.axis && last.at === move.at && last.count === -move.count;

const isFollowed = (moves: readonly (LineMove | undefined)[]): moves is readonly LineMove[] =>
  !moves.includes(undefined);

/** Watches what was moved on which sheets, other than there and back. */
export const watchMoves = (commands: ICommandService): (() => ReadonlyMap<string, SheetMoves>) => {
  const movesBySheet = new Map<string, (LineMove | undefined)[]>();
  commands.onCommandExecuted(({ id, params }) => {
    if (!isMove(id)) return;
    const move = lineMove(id, (params ?? {}) as MoveParams);
    for (const sheetId of movedSheetIdsOf(params)) {
      const moves = movesBySheet.get(sheetId) ?? [];
      movesBySheet.set(sheetId, moves);
      if (isTakenBack(moves.at(-1), move)) moves.pop();
      else moves.push(move);
    }
  });
  return () =>
    new Map(
      [...movesBySheet]
        .filter(([, moves]) => moves.length > 0)
        .map(([sheetId, moves]) => [sheetId, isFollowed(moves) ? [...moves] : "scattered"]),
    );
};
