import { greatestCommonDivisor } from "./commonDivisor";
import type { PackingProblem, Stock } from "./packingProblem";

/** A packing problem, with the pieces behind each of its sizes. */
export interface GroupedPieces<P> {
  readonly problem: PackingProblem;
  readonly piecesOfSize: readonly (readonly P[])[];
  /** Ticks in one unit of the problem's sizes. */
  readonly unit: number;
}

/** Groups pieces of the same size, and divides all sizes and capacities by their greatest common divisor. */
export const packingProblemOf = <P>(
  pieces: readonly P[],
  sizeOf: (piece: P) => number,
  stocks: readonly Stock[],
): GroupedPieces<P> => {
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
