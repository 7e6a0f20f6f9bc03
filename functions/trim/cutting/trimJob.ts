import { InputError, noAnswer } from "../../../shared/inputError";
import type { Column } from "../../../shared/kinds/column";

/** Stock of one length. */
export interface StockLength {
  readonly lengthIn: number;
  /** Present for every stock, or for none. */
  readonly price?: number;
  /** How many there are; Infinity where there is no end of them. */
  readonly limit: number;
}

/** A run with its place in the range it came from, counted from 1. */
export interface Run {
  readonly number: number;
  readonly lengthFt: number;
}

/** What is to be cut, and how. */
export interface TrimJob {
  readonly runs: readonly Run[];
  readonly stocks: readonly StockLength[];
  /** Where two pieces of a run meet; undefined where a run may have no joint. */
  readonly lapIn: number | undefined;
  readonly kerfIn: number;
  /** No piece of a run with joints is shorter. */
  readonly shortestIn: number;
}

const valueBeside = <T>(column: Column<T>, index: number, label: string, stocks: Column<number>) => {
  if (column.length !== stocks.length)
    throw new InputError(
      `${label} must be as many as the cells of stock, ${stocks.length}, got ${column.length}`,
    );
  return column[index];
};

const stockLengths = (
  stocksIn: Column<number>,
  prices: Column<number> | undefined,
  limits: Column<number> | undefined,
): StockLength[] =>
  stocksIn.flatMap((lengthIn, index) => {
    const limit = (limits && valueBeside(limits, index, "limits", stocksIn)) ?? Infinity;
    const price = prices && valueBeside(prices, index, "prices", stocksIn);
    if (lengthIn === undefined) return [];
    if (!prices) return [{ lengthIn, limit }];
    if (price === undefined) throw new InputError(`prices has none for the stock of ${lengthIn} in`);
    return [{ lengthIn, limit, price }];
  });

/** Puts the parameters together and checks them against one another. */
export const trimJob = (
  lengthsFt: Column<number>,
  stocksIn: Column<number>,
  lapIn: number | undefined,
  kerfIn: number,
  shortestIn: number,
  prices: Column<number> | undefined,
  limits: Column<number> | undefined,
): TrimJob => {
  const stocks = stockLengths(stocksIn, prices, limits).filter(({ limit }) => limit > 0);
  if (stocks.length === 0) throw noAnswer("limits leave no stock at all");
  const lengths = stocks.map((stock) => stock.lengthIn);
  const [least, most] = [Math.min(...lengths), Math.max(...lengths)];
  if (lapIn !== undefined && !(lapIn < least))
    throw new InputError(`lap must be less than the stock's ${least} in, got ${lapIn}`);
  if (!(2 * shortestIn <= most))
    throw new InputError(`shortest must be at most half of the stock's ${most} in, got ${shortestIn}`);
  const runs = lengthsFt.flatMap((lengthFt, index) =>
    lengthFt === undefined ? [] : [{ number: index + 1, lengthFt }],
  );
  return { runs, stocks, lapIn, kerfIn, shortestIn };
};
