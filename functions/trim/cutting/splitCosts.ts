import { costOfWhole, stocksAfter, type ChosenSplit } from "./splitPlan";
import { knapsackCoverCost } from "./knapsackCover";
import type { Split, RunSplits } from "./splits";
import { dualFeasibleBound } from "./lowerBound";
import type { Material } from "./material";
import type { PieceCost } from "./pieceCost";
import type { DualFeasibleFunction } from "./dualFeasibleFunctions";

/** A run with its possible splits. */
export interface SplitOptions extends RunSplits {
  readonly run: number;
  /** The least that the run takes under any split, in ticks, with a kerf. */
  readonly leastSize: number;
}

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

/** The size of a split under a dual feasible function. */
const sizeUnder = ({ stocks, kerf }: Material, { whole, cut }: Split, dff: DualFeasibleFunction): number =>
  sumOf(whole.map((stock) => dff(stocks[stock]?.capacity ?? 0))) +
  sumOf(cut.map((ticks) => dff(ticks + kerf)));

const leastSizeUnder = (material: Material, splits: readonly Split[], dff: DualFeasibleFunction): number =>
  Math.min(...splits.map((split) => sizeUnder(material, split, dff)));

const length: DualFeasibleFunction = (size) => size;

const boundByLength = ({ stocks }: Material, runs: readonly SplitOptions[]): number =>
  knapsackCoverCost(
    stocks,
    stocks.map(({ capacity }) => capacity),
    sumOf(runs.map(({ leastSize }) => leastSize)),
  );

/** A lower bound on the cost of every plan, whatever the splits. */
export const boundOverSplits = (material: Material, runs: readonly SplitOptions[]): number => {
  if (!runs.every(({ isComplete }) => isComplete)) return boundByLength(material, runs);
  const sizes = runs.flatMap(({ splits }) =>
    splits.flatMap(({ cut }) => cut.map((ticks) => ticks + material.kerf)),
  );
  return dualFeasibleBound(material.stocks, [...new Set(sizes)], (dff) =>
    sumOf(runs.map(({ splits }) => leastSizeUnder(material, splits, dff))),
  );
};

/** The cost of a split at these costs per piece. */
export const splitCost = ({ stocks, kerf }: Material, { whole, cut }: Split, pieceCost: PieceCost): number =>
  sumOf(whole.map((stock) => stocks[stock]?.cost ?? 0)) + sumOf(cut.map((ticks) => pieceCost(ticks + kerf)));

/** The whole cost at or above a sum that may be too large by rounding error. */
const wholeCost = (cost: number): number => Math.ceil(cost * (1 - 1e-11));

/** A lower bound on the cost of plans with these splits chosen for some runs, by cost per piece. */
export const boundByPieces = (
  material: Material,
  chosen: readonly ChosenSplit[],
  rest: readonly SplitOptions[],
  pieceCost: PieceCost,
): number =>
  wholeCost(
    sumOf(chosen.map(({ split }) => splitCost(material, split, pieceCost))) +
      sumOf(
        rest.map(({ splits }) => Math.min(...splits.map((split) => splitCost(material, split, pieceCost)))),
      ),
  );

/** A lower bound on the cost of plans with these splits chosen for some runs, by length. Infinity: too little stock. */
export const boundByStock = (
  material: Material,
  chosen: readonly ChosenSplit[],
  rest: readonly SplitOptions[],
): number => {
  const left = stocksAfter(material.stocks, chosen);
  if (!left) return Infinity;
  const demand =
    sumOf(chosen.map(({ split }) => sizeUnder(material, { ...split, whole: [] }, length))) +
    sumOf(rest.map(({ splits }) => leastSizeUnder(material, splits, length)));
  const capacities = material.stocks.map(({ capacity }) => capacity);
  return costOfWhole(material.stocks, chosen) + knapsackCoverCost(left, capacities, demand);
};
