import type { Budget } from "./budget";
import type { Division } from "./divisions";
import { withLongestLeftOver } from "./leftOver";
import type { Material } from "./material";
import { pack, type Packing } from "./pack";
import type { Stock } from "./packingProblem";
import { problemOf, type PiecesProblem } from "./packingProblemOf";

/** A piece to cut, in marks, and the number of its run. */
export interface CutPiece {
  readonly run: number;
  readonly marks: number;
}

/** How one run is made up. */
export interface MadeUp {
  readonly run: number;
  readonly division: Division;
}

/** A plan for runs that are made up in one given way. */
export interface ChosenPlan {
  readonly madeUp: readonly MadeUp[];
  readonly pieces: PiecesProblem<CutPiece>;
  readonly packing: Packing;
  /** With the stock that goes on whole. */
  readonly cost: number;
  readonly bound: number;
}

const piecesOf = (madeUp: readonly MadeUp[]): CutPiece[] =>
  madeUp.flatMap(({ run, division }) => division.cut.map((marks) => ({ run, marks })));

/** What is left of the limits after the stock that goes on whole. Undefined where that is too much already. */
export const stocksAfter = (
  stocks: readonly Stock[],
  madeUp: readonly MadeUp[],
): readonly Stock[] | undefined => {
  const used = stocks.map(() => 0);
  for (const { division } of madeUp) for (const stock of division.whole) used[stock] = (used[stock] ?? 0) + 1;
  const left = stocks.map((stock, index) => ({ ...stock, limit: stock.limit - (used[index] ?? 0) }));
  return left.every(({ limit }) => limit >= 0) ? left : undefined;
};

export const costOfWhole = (stocks: readonly Stock[], madeUp: readonly MadeUp[]): number =>
  madeUp.reduce(
    (sum, { division }) => division.whole.reduce((cost, stock) => cost + (stocks[stock]?.cost ?? 0), sum),
    0,
  );

/** Packs what is cut of runs made up in this way. Undefined where the stock doesn't do, or none was found that does. */
export const planFor = (
  { stocks, kerf }: Material,
  madeUp: readonly MadeUp[],
  budget: Budget,
): ChosenPlan | undefined => {
  const left = stocksAfter(stocks, madeUp);
  if (!left) return undefined;
  const pieces = problemOf(piecesOf(madeUp), ({ marks }) => marks + kerf, left);
  const packing = pack(pieces.problem, budget);
  if (!packing) return undefined;
  const whole = costOfWhole(stocks, madeUp);
  return { madeUp, pieces, packing, cost: whole + packing.cost, bound: whole + packing.bound };
};

/** The same plan with the longest left-over at this cost. */
export const withLeftOver = (plan: ChosenPlan, budget: Budget): ChosenPlan => ({
  ...plan,
  packing: {
    ...plan.packing,
    bins: withLongestLeftOver(plan.pieces.problem, plan.packing.bins, budget),
  },
});
