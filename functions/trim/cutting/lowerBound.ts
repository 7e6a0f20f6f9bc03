import { knapsackCoverCost } from "./knapsackCover";
import type { PackingProblem, Stock } from "./packingProblem";
import {
  roundingFunction,
  countingFunction,
  thresholdFunction,
  type DualFeasibleFunction,
} from "./dualFeasibleFunctions";

const MOST_PARTS = 20;
/** The most sizes that serve as thresholds. Where there are more, every second or third one serves, and so on. */
const MOST_THRESHOLDS = 60;

const thinned = (sizes: readonly number[]): number[] => {
  const step = Math.ceil(sizes.length / MOST_THRESHOLDS);
  return sizes.filter((_, index) => index % step === 0);
};

const dualFeasibleFunctionsFor = (sizes: readonly number[], capacity: number): DualFeasibleFunction[] => {
  const thresholds = thinned([...new Set(sizes.flatMap((size) => [size, capacity - size + 1]))]).filter(
    (size) => 2 * size <= capacity,
  );
  return [
    (size) => size,
    ...thresholds.map((least) => thresholdFunction(capacity, least)),
    ...Array.from({ length: MOST_PARTS }, (_, index) => roundingFunction(capacity, index + 1)),
    ...thresholds.map((piece) => countingFunction(capacity, piece)),
  ];
};

/**
 * The best bound of all dual feasible functions. `demandOf` gives the total transformed size that a plan must hold, and
 * `sizes` supply the thresholds. Infinity where the stock can't hold the demand.
 */
export const dualFeasibleBound = (
  stocks: readonly Stock[],
  sizes: readonly number[],
  demandOf: (dff: DualFeasibleFunction) => number,
): number => {
  const largest = Math.max(...stocks.map(({ capacity }) => capacity));
  return dualFeasibleFunctionsFor(sizes, largest).reduce((best, dff) => {
    const values = stocks.map(({ capacity }) => dff(capacity));
    return Math.max(best, knapsackCoverCost(stocks, values, demandOf(dff)));
  }, 0);
};

const sizesToCut = ({ sizes, counts }: PackingProblem): number[] =>
  sizes.filter((_, index) => (counts[index] ?? 0) > 0);

const demandBy = ({ sizes, counts }: PackingProblem, dff: DualFeasibleFunction): number =>
  sizes.reduce((sum, size, index) => sum + (counts[index] ?? 0) * dff(size), 0);

/** A lower bound on the cost of every plan. */
export const lowerBound = (problem: PackingProblem): number =>
  dualFeasibleBound(problem.stocks, sizesToCut(problem), (dff) => demandBy(problem, dff));

/** The largest whole number up to `most` that passes, where 0 passes and so does every number below one that passes. */
const largestPassing = (passes: (size: number) => boolean, most: number): number => {
  if (passes(most)) return most;
  let [least, tooLarge] = [0, most];
  while (tooLarge - least > 1) {
    const middle = Math.floor((least + tooLarge) / 2);
    if (passes(middle)) least = middle;
    else tooLarge = middle;
  }
  return least;
};

/** An upper bound, up to `most`, on the size of one more piece in a plan of at most this cost. */
export const longestAddablePiece = (problem: PackingProblem, mostCost: number, most: number): number => {
  const { stocks } = problem;
  const largest = Math.max(...stocks.map(({ capacity }) => capacity));
  return dualFeasibleFunctionsFor(sizesToCut(problem), largest).reduce((longest, dff) => {
    const values = stocks.map(({ capacity }) => dff(capacity));
    const demand = demandBy(problem, dff);
    return largestPassing(
      (size) => knapsackCoverCost(stocks, values, demand + dff(size)) <= mostCost,
      longest,
    );
  }, most);
};
