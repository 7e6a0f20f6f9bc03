import { costOfWhole, stocksAfter, type MadeUp } from "./chosenPlan";
import { coveringCost } from "./cover";
import type { Division, Divisions } from "./divisions";
import { dualFeasibleBound } from "./lowerBound";
import type { Material } from "./material";
import type { PieceCost } from "./pieceCost";
import type { DualFeasibleFunction } from "./dualFeasibleFunctions";

/** A run with the ways in which it can be made up. */
export interface RunChoices extends Divisions {
  readonly run: number;
  /** What the run takes at the least, in marks and with a kerf, however it is made up. */
  readonly leastSize: number;
}

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

/** What a division weighs by a dual feasible function. */
const weightOf = (
  { stocks, kerf }: Material,
  { whole, cut }: Division,
  weigh: DualFeasibleFunction,
): number =>
  sumOf(whole.map((stock) => weigh(stocks[stock]?.capacity ?? 0))) +
  sumOf(cut.map((marks) => weigh(marks + kerf)));

const leastWeight = (material: Material, choices: readonly Division[], weigh: DualFeasibleFunction): number =>
  Math.min(...choices.map((division) => weightOf(material, division, weigh)));

const length: DualFeasibleFunction = (size) => size;

const boundByLength = ({ stocks }: Material, runs: readonly RunChoices[]): number =>
  coveringCost(
    stocks,
    stocks.map(({ capacity }) => capacity),
    sumOf(runs.map(({ leastSize }) => leastSize)),
  );

/** No plan costs less, whichever way each run is made up. */
export const choiceBound = (material: Material, runs: readonly RunChoices[]): number => {
  if (!runs.every(({ isComplete }) => isComplete)) return boundByLength(material, runs);
  const sizes = runs.flatMap(({ choices }) =>
    choices.flatMap(({ cut }) => cut.map((marks) => marks + material.kerf)),
  );
  return dualFeasibleBound(material.stocks, [...new Set(sizes)], (weigh) =>
    sumOf(runs.map(({ choices }) => leastWeight(material, choices, weigh))),
  );
};

/** What a division costs where its pieces cost so much. */
export const divisionCost = (
  { stocks, kerf }: Material,
  { whole, cut }: Division,
  pieceCost: PieceCost,
): number =>
  sumOf(whole.map((stock) => stocks[stock]?.cost ?? 0)) + sumOf(cut.map((marks) => pieceCost(marks + kerf)));

/** What floating point may add. */
const wholeCost = (cost: number): number => Math.ceil(cost * (1 - 1e-11));

/** No plan costs less in which some runs are made up so, where pieces cost so much. */
export const boundByPieces = (
  material: Material,
  madeUp: readonly MadeUp[],
  rest: readonly RunChoices[],
  pieceCost: PieceCost,
): number =>
  wholeCost(
    sumOf(madeUp.map(({ division }) => divisionCost(material, division, pieceCost))) +
      sumOf(
        rest.map(({ choices }) =>
          Math.min(...choices.map((division) => divisionCost(material, division, pieceCost))),
        ),
      ),
  );

/** No plan costs less in which some runs are made up so, by length. Infinity where the stock doesn't do. */
export const boundByStock = (
  material: Material,
  madeUp: readonly MadeUp[],
  rest: readonly RunChoices[],
): number => {
  const left = stocksAfter(material.stocks, madeUp);
  if (!left) return Infinity;
  const demand =
    sumOf(madeUp.map(({ division }) => weightOf(material, { ...division, whole: [] }, length))) +
    sumOf(rest.map(({ choices }) => leastWeight(material, choices, length)));
  const capacities = material.stocks.map(({ capacity }) => capacity);
  return costOfWhole(material.stocks, madeUp) + coveringCost(left, capacities, demand);
};
