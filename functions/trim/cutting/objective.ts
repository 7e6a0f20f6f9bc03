import { greatestCommonDivisor } from "./commonDivisor";
import type { StockLength } from "./trimJob";

/** Prices are reckoned in hundredths of a cent. */
const PRICE_UNITS = 10_000;
/** Without prices, of two plans with as many stock lengths the shorter in all is better, to this part of the longest. */
const LENGTH_UNITS = 1000;
/** More pieces than any job has: so many shorter lengths never outweigh one length more. */
export const MOST_PIECES = 5000;

const COUNT_UNITS = (LENGTH_UNITS + 1) * MOST_PIECES;

/** What a plan is to have least of, as whole numbers a stock. */
export interface Objective {
  readonly costs: readonly number[];
  /** What the last row says of a plan's cost and of the bound under it. */
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

/** The least cost where there are prices, or else the fewest stock lengths, and of these the shortest. */
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
