/**
 * A dual feasible function maps sizes up to the largest capacity to transformed sizes. It is superadditive: parts never
 * add up to more than their whole, so no stock holds more than its own transformed capacity, and the transformed problem
 * bounds the original. The threshold function goes back to the bound L2 of Martello and Toth, and is U(ε) in Fekete and
 * Schepers; the rounding function is their u(k); the counting function is by Carlier, Clautiaux and Moukrim. (Names and
 * forms from memory; the tests check that all are superadditive.)
 */
export type DualFeasibleFunction = (size: number) => number;

/** Sizes too large to share a stock with `least` count as the whole stock; sizes smaller than `least` count as 0. */
export const thresholdFunction =
  (capacity: number, least: number): DualFeasibleFunction =>
  (size) =>
    size > capacity - least ? capacity : size < least ? 0 : size;

/** How many parts of 1 / (k + 1) stock a size holds, each counted as 1 / k; an exact multiple keeps its true share. */
export const roundingFunction =
  (capacity: number, k: number): DualFeasibleFunction =>
  (size) => {
    const scaled = (k + 1) * size;
    return scaled % capacity === 0 ? k * size : Math.floor(scaled / capacity) * capacity;
  };

/** How many pieces of one size a piece displaces; a large piece is counted by what it leaves room for. */
export const countingFunction =
  (capacity: number, piece: number): DualFeasibleFunction =>
  (size) => {
    const all = Math.floor(capacity / piece);
    if (2 * size > capacity) return 2 * (all - Math.floor((capacity - size) / piece));
    return 2 * size === capacity ? all : 2 * Math.floor(size / piece);
  };
