import { InputError, noAnswer } from "../../../shared/inputError";
import type { Column } from "../../../shared/kinds/column";

/** One stock length. */
export interface StockLength {
  readonly lengthIn: number;
  /** Given for every stock length, or for none. */
  readonly price?: number;
  /** How many are available; Infinity for no limit. */
  readonly limit: number;
}

/** A run, numbered from 1 by its cell in the range. */
export interface Run {
  readonly number: number;
  readonly lengthFt: number;
}

/** What is to be cut, and how. */
export interface TrimJob {
  readonly runs: readonly Run[];
  readonly stocks: readonly StockLength[];
  /** Overlap where two pieces of a run meet; undefined where no run may have a joint. */
  readonly lapIn: number | undefined;
  readonly kerfIn: number;
  /** Shortest piece allowed in a run that has joints. */
  readonly shortestIn: number;
}

const valueAt = <T>(column: Column<T>, index: number, label: string, stocks: Column<number>) => {
  if (column.length !== stocks.length)
    throw new InputError(
      `${label} must have one cell for each cell of stock (${stocks.length}), got ${column.length}`,
    );
  return column[index];
};

const stockLengths = (
  stocksIn: Column<number>,
  prices: Column<number> | undefined,
  limits: Column<number> | undefined,
): StockLength[] =>
  stocksIn.flatMap((lengthIn, index) => {
    const limit = (limits && valueAt(limits, index, "limits", stocksIn)) ?? Infinity;
    const price = prices && valueAt(prices, index, "prices", stocksIn);
    if (lengthIn === undefined) return [];
    if (!prices) return [{ lengthIn, limit }];
    if (price === undefined) throw new InputError(`prices has no price for the ${lengthIn} in stock`);
    return [{ lengthIn, limit, price }];
  });

/** Combines the parameters and checks them against each other. */
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
  if (stocks.length === 0) throw noAnswer("limits leave no stock to cut from");
  const lengths = stocks.map((stock) => stock.lengthIn);
  const [least, most] = [Math.min(...lengths), Math.max(...lengths)];
  if (lapIn !== undefined && !(lapIn < least))
    throw new InputError(`lap must be less than the shortest stock length, ${least} in, got ${lapIn}`);
  if (!(2 * shortestIn <= most))
    throw new InputError(
      `shortest must be at most half the longest stock length, ${most} in, got ${shortestIn}`,
    );
  const runs = lengthsFt.flatMap((lengthFt, index) =>
    lengthFt === undefined ? [] : [{ number: index + 1, lengthFt }],
  );
  return { runs, stocks, lapIn, kerfIn, shortestIn };
};
