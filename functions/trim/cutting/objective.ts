import { greatestCommonDivisor } from "./commonDivisor";
import type { StockLength } from "./trimJob";

/** Prices count in hundredths of a cent. */
const PRICE_UNITS = 10_000;
/** Without prices, ties in the number of stock lengths go to the shorter total, to this fraction of the longest stock. */
const LENGTH_UNITS = 1000;
/** More pieces than any job has, so that no number of shorter lengths ever outweighs one more length. */
export const MOST_PIECES = 5000;

const COUNT_UNITS = (LENGTH_UNITS + 1) * MOST_PIECES;

/** What a plan minimizes: a whole-number cost per stock length. */
export interface Objective {
  readonly costs: readonly number[];
  /** How the last row of TRIMCUTS compares a plan's cost with its lower bound. */
  verdict(cost: number, bound: number): string;
}

const countVerdict = (cost: number, bound: number): string => {
  const excess = Math.floor(cost / COUNT_UNITS) - Math.floor(bound / COUNT_UNITS);
  return excess === 0 ? "proved fewest" : `within ${excess} of the bound`;
};

const priceVerdict = (cost: number, bound: number): string => {
  const excess = Math.ceil(((cost - bound) * 100) / PRICE_UNITS) / 100;
  return cost === bound ? "proved cheapest" : `within ${excess.toFixed(2)} of the bound`;
};

/** The least cost where there are prices; otherwise the fewest stock lengths, and among those the shortest total. */
export const objectiveFor = (stocks: readonly StockLength[]): Objective => {
  const longestIn = Math.max(...stocks.map(({ lengthIn }) => lengthIn));
  const isPriced = stocks.some(({ price }) => price !== undefined);
  const costs = stocks.map(({ lengthIn, price = 0 }) =>
    isPriced
      ? Math.round(price * PRICE_UNITS)
      : COUNT_UNITS + Math.ceil((lengthIn / longestIn) * LENGTH_UNITS),
  );
  const unit = costs.reduce(greatestCommonDivisor, 0);
  const verdict = isPriced ? priceVerdict : countVerdict;
  return {
    costs: costs.map((cost) => cost / unit),
    verdict: (cost, bound) => verdict(cost * unit, bound * unit),
  };
};
