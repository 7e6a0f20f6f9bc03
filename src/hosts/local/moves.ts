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

/** What Undo does to the one is the other. */
const OPPOSITES = new Map([
  [InsertRowMutation.id, RemoveRowMutation.id],
  [RemoveRowMutation.id, InsertRowMutation.id],
  [InsertColMutation.id, RemoveColMutation.id],
  [RemoveColMutation.id, InsertColMutation.id],
]);

const MOVES = new Set([
  ...OPPOSITES.keys(),
  MoveRowsMutation.id,
  MoveColsMutation.id,
  MoveRangeMutation.id,
  ReorderRangeMutation.id,
]);

export const isMove = (commandId: string): boolean => MOVES.has(commandId);

interface Move {
  readonly id: string;
  readonly range: string;
}

interface MoveParams {
  readonly subUnitId?: string;
  readonly range?: { startRow: number; endRow: number; startColumn: number; endColumn: number };
  readonly from?: { readonly subUnitId: string };
  readonly to?: { readonly subUnitId: string };
}

/** The sheets that a move takes cells from or brings them to. */
export const movedSheetIdsOf = (params: object | undefined): string[] => {
  const { subUnitId, from, to } = (params ?? {}) as MoveParams;
  const ids = new Set([subUnitId, from?.subUnitId, to?.subUnitId]);
  return [...ids].filter((id) => id !== undefined);
};

/** Watches which sheets have had rows, columns or blocks of cells moved, other than there and back. */
export const watchMoves = (commands: ICommandService): (() => ReadonlySet<string>) => {
  const movesBySheet = new Map<string, Move[]>();
  commands.onCommandExecuted(({ id, params }) => {
    if (!MOVES.has(id)) return;
    const { range } = (params ?? {}) as MoveParams;
    const move = {
      id,
      range: range ? [range.startRow, range.endRow, range.startColumn, range.endColumn].join() : "",
    };
    for (const sheetId of movedSheetIdsOf(params)) {
      const moves = movesBySheet.get(sheetId) ?? [];
      movesBySheet.set(sheetId, moves);
      const last = moves.at(-1);
      if (last && OPPOSITES.get(last.id) === id && last.range === move.range) moves.pop();
      else moves.push(move);
    }
  });
  return () => new Set([...movesBySheet].filter(([, moves]) => moves.length > 0).map(([sheetId]) => sheetId));
};
