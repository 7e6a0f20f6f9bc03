import type { Bin, PackingProblem, Stock } from "../../functions/trim/cutting/packingProblem";

/** More steps than any search in a test takes. */
export const PLENTY = 1_000_000;
export const SEEDS: readonly number[] = Array.from({ length: 30 }, (_, seed) => seed + 1);

export const endless = (capacity: number, cost = 1): Stock => ({ capacity, cost, limit: Infinity });

export const problemFrom = (pieces: readonly number[], stocks: readonly Stock[]): PackingProblem => {
  const sizes = [...new Set(pieces)].sort((a, b) => b - a);
  return { sizes, counts: sizes.map((size) => pieces.filter((piece) => piece === size).length), stocks };
};

export const timesIn = ({ sizes }: PackingProblem, items: readonly number[]): number[] =>
  sizes.map((_, place) => items.filter((item) => item === place).length);

/** The least steps that don't leave a search undecided, where it decides in so many and in all above. */
export const leastSteps = (isDecided: (steps: number) => boolean): number => {
  let steps = 0;
  while (!isDecided(steps)) steps += 1;
  return steps;
};

/** Whether bins hold every piece once, none more than its stock does, and no more stock than there is. */
export const expectPlan = (problem: PackingProblem, bins: readonly Bin[]): void => {
  expect(
    timesIn(
      problem,
      bins.flatMap(({ items }) => items),
    ),
  ).toEqual(problem.counts);
  for (const { stock, items } of bins)
    expect(
      items.reduce(
        (left, item) => left - (problem.sizes[item] ?? NaN),
        problem.stocks[stock]?.capacity ?? NaN,
      ),
    ).toBeGreaterThanOrEqual(0);
  problem.stocks.forEach(({ limit }, index) => {
    expect(bins.filter(({ stock }) => stock === index).length).toBeLessThanOrEqual(limit);
  });
};
