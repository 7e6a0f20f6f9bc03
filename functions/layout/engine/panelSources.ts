import type { LaidPanel } from "../../../shared/kinds/panel";
import type { Reusable } from "./piece";
import { matchPieces, type Pair } from "./offcutMatching";

/** The panel that a piece is cut from; panels are numbered in order of use. */
export interface PanelSource {
  readonly panelNumber: number;
  readonly isOffcut: boolean;
}

/**
 * Pairs of pieces cut from one panel. An off-cut is the full-height rest of a panel beyond the blank of its first piece,
 * whatever the slant or height of that piece, less the cut loss and the lock loss. It fits any course.
 */
export const pairsIn = (pieces: readonly Reusable[], panel: LaidPanel): Pair[] =>
  matchPieces(pieces, panel.exposedWidthIn - panel.cutLossIn - panel.lockLossIn);

/** In the order of laying, the first piece of a pair starts a new panel; the second comes from its off-cut. */
export const sourcesOf = (pieceCount: number, pairs: readonly Pair[]): PanelSource[] => {
  const opener = new Map(pairs.map(([a, b]) => [Math.max(a, b), Math.min(a, b)]));
  const sources: PanelSource[] = [];
  let opened = 0;
  for (let index = 0; index < pieceCount; index++) {
    const first = sources[opener.get(index) ?? -1];
    sources.push(
      first ? { panelNumber: first.panelNumber, isOffcut: true } : { panelNumber: ++opened, isOffcut: false },
    );
  }
  return sources;
};
