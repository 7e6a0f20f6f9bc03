import { coveringCost } from "./cover";
import type { Problem, Stock } from "./packingProblem";
import { inParts, inPieces, wholeOrNothing, type DualFeasibleFunction } from "./dualFeasibleFunctions";

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
    ...thresholds.map((least) => wholeOrNothing(capacity, least)),
    ...Array.from({ length: MOST_PARTS }, (_, index) => inParts(capacity, index + 1)),
    ...thresholds.map((piece) => inPieces(capacity, piece)),
  ];
};

/**
 * The largest bound that the dual feasible functions give. `demandOf` is the weight that a plan must hold by one of
 * them; `sizes` are the thresholds. Infinity where the stock can't hold that much.
 */
export const dualFeasibleBound = (
  stocks: readonly Stock[],
  sizes: readonly number[],
  demandOf: (weigh: DualFeasibleFunction) => number,
): number => {
  const largest = Math.max(...stocks.map(({ capacity }) => capacity));
  return dualFeasibleFunctionsFor(sizes, largest).reduce((best, weigh) => {
    const worths = stocks.map(({ capacity }) => weigh(capacity));
    return Math.max(best, coveringCost(stocks, worths, demandOf(weigh)));
  }, 0);
};

const sizesToCut = ({ sizes, counts }: Problem): number[] =>
  sizes.filter((_, index) => (counts[index] ?? 0) > 0);

const demandBy = ({ sizes, counts }: Problem, weigh: DualFeasibleFunction): number =>
  sizes.reduce((sum, size, index) => sum + (counts[index] ?? 0) * weigh(size), 0);

/** No plan costs less. */
export const lowerBound = (problem: Problem): number =>
  dualFeasibleBound(problem.stocks, sizesToCut(problem), (weigh) => demandBy(problem, weigh));

/** The largest whole number up to `most` that will do, where 0 does and so does every number below one that does. */
const largestThat = (does: (size: number) => boolean, most: number): number => {
  if (does(most)) return most;
  let [least, tooLarge] = [0, most];
  while (tooLarge - least > 1) {
    const middle = Math.floor((least + tooLarge) / 2);
    if (does(middle)) least = middle;
    else tooLarge = middle;
  }
  return least;
};

/** No piece that is longer, up to `most`, can be added to a plan that costs no more than this. */
export const longestBeside = (problem: Problem, mostCost: number, most: number): number => {
  const { stocks } = problem;
  const largest = Math.max(...stocks.map(({ capacity }) => capacity));
  return dualFeasibleFunctionsFor(sizesToCut(problem), largest).reduce((longest, weigh) => {
    const worths = stocks.map(({ capacity }) => weigh(capacity));
    const demand = demandBy(problem, weigh);
    return largestThat((size) => coveringCost(stocks, worths, demand + weigh(size)) <= mostCost, longest);
  }, most);
};
