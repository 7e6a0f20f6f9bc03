import type { Budget } from "./budget";
import type { Split } from "./splits";
import { withLongestLeftOver } from "./leftOver";
import type { Material } from "./material";
import { pack, type Packing } from "./pack";
import type { Stock } from "./packingProblem";
import { packingProblemOf, type GroupedPieces } from "./packingProblemOf";

/** A piece to cut, in ticks, and the number of its run. */
export interface CutPiece {
  readonly run: number;
  readonly ticks: number;
}

/** The split chosen for one run. */
export interface ChosenSplit {
  readonly run: number;
  readonly split: Split;
}

/** A plan for one choice of splits. */
export interface SplitPlan {
  readonly chosen: readonly ChosenSplit[];
  readonly pieces: GroupedPieces<CutPiece>;
  readonly packing: Packing;
  /** Includes the stock lengths used whole. */
  readonly cost: number;
  readonly bound: number;
}

const piecesOf = (chosen: readonly ChosenSplit[]): CutPiece[] =>
  chosen.flatMap(({ run, split }) => split.cut.map((ticks) => ({ run, ticks })));

/** The stock left after the lengths used whole. Undefined where they exceed the limits. */
export const stocksAfter = (
  stocks: readonly Stock[],
  chosen: readonly ChosenSplit[],
): readonly Stock[] | undefined => {
  const used = stocks.map(() => 0);
  for (const { split } of chosen) for (const stock of split.whole) used[stock] = (used[stock] ?? 0) + 1;
  const left = stocks.map((stock, index) => ({ ...stock, limit: stock.limit - (used[index] ?? 0) }));
  return left.every(({ limit }) => limit >= 0) ? left : undefined;
};

export const costOfWhole = (stocks: readonly Stock[], chosen: readonly ChosenSplit[]): number =>
  chosen.reduce(
    (sum, { split }) => split.whole.reduce((cost, stock) => cost + (stocks[stock]?.cost ?? 0), sum),
    0,
  );

/** Packs the pieces to cut for these splits. Undefined where no plan within the limits was found. */
export const planForSplits = (
  { stocks, kerf }: Material,
  chosen: readonly ChosenSplit[],
  budget: Budget,
): SplitPlan | undefined => {
  const left = stocksAfter(stocks, chosen);
  if (!left) return undefined;
  const pieces = packingProblemOf(piecesOf(chosen), ({ ticks }) => ticks + kerf, left);
  const packing = pack(pieces.problem, budget);
  if (!packing) return undefined;
  const whole = costOfWhole(stocks, chosen);
  return { chosen, pieces, packing, cost: whole + packing.cost, bound: whole + packing.bound };
};

/** The same plan, repacked for the longest left-over at the same cost. */
export const withLeftOver = (plan: SplitPlan, budget: Budget): SplitPlan => ({
  ...plan,
  packing: {
    ...plan.packing,
    bins: withLongestLeftOver(plan.pieces.problem, plan.packing.bins, budget),
  },
});
