import matching from "edmonds-blossom";
import type { Reusable } from "../../functions/layout/engine/piece";

/** Whether one panel gives both pieces: they fit side by side and don't keep the same lock. */
export const canShare = (a: Reusable, b: Reusable, roomIn: number): boolean =>
  a.blankIn + b.blankIn <= roomIn + 1e-9 &&
  a.keeps !== "both" &&
  b.keeps !== "both" &&
  (a.keeps === "neither" || a.keeps !== b.keeps);

/** The largest number of pairs, by maximum matching in a general graph (Edmonds). */
export const mostPairs = (pieces: readonly Reusable[], roomIn: number): number => {
  const edges = pieces.flatMap((a, i) =>
    pieces
      .slice(i + 1)
      .flatMap((b, j): [number, number, number][] => (canShare(a, b, roomIn) ? [[i, i + 1 + j, 1]] : [])),
  );
  return matching(edges, true).filter((partner) => partner >= 0).length / 2;
};
