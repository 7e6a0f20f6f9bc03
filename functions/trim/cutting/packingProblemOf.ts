import { greatestCommonDivisor } from "./commonDivisor";
import type { Problem, Stock } from "./packingProblem";

/** A problem, with the pieces of each of its sizes. */
export interface PiecesProblem<P> {
  readonly problem: Problem;
  readonly piecesOfSize: readonly (readonly P[])[];
  /** One unit of the problem's sizes. */
  readonly unit: number;
}

/** Pieces of the same size put together, and all sizes divided by what divides all. */
export const problemOf = <P>(
  pieces: readonly P[],
  sizeOf: (piece: P) => number,
  stocks: readonly Stock[],
): PiecesProblem<P> => {
  const bySize = new Map<number, P[]>();
  for (const piece of pieces) {
    const size = sizeOf(piece);
    const alike = bySize.get(size);
    if (alike) alike.push(piece);
    else bySize.set(size, [piece]);
  }
  const sizes = [...bySize.keys()].sort((a, b) => b - a);
  const unit = [...sizes, ...stocks.map(({ capacity }) => capacity)].reduce(greatestCommonDivisor, 0);
  const piecesOfSize = sizes.map((size) => bySize.get(size) ?? []);
  return {
    unit,
    piecesOfSize,
    problem: {
      sizes: sizes.map((size) => size / unit),
      counts: piecesOfSize.map((alike) => alike.length),
      stocks: stocks.map((stock) => ({ ...stock, capacity: stock.capacity / unit })),
    },
  };
};
