/**
 * A dual feasible function gives each size up to the largest capacity a weight. It is superadditive: parts never weigh
 * more than their whole, so a stock holds at most the weight of its own capacity. The first two kinds go back to
 * Martello and Toth's bound L2 and to Fekete and Schepers, the third to Carlier, Clautiaux and Moukrim (names and forms
 * from memory; the tests check that they are superadditive).
 */
export type DualFeasibleFunction = (size: number) => number;

/** Sizes too large to lie beside one of `least` count as a whole stock, smaller ones than that as nothing. */
export const wholeOrNothing =
  (capacity: number, least: number): DualFeasibleFunction =>
  (size) =>
    size > capacity - least ? capacity : size < least ? 0 : size;

/** Sizes in parts of which `parts + 1` go into a stock, rounded down where they don't come out whole. */
export const inParts =
  (capacity: number, parts: number): DualFeasibleFunction =>
  (size) => {
    const scaled = (parts + 1) * size;
    return scaled % capacity === 0 ? parts * size : Math.floor(scaled / capacity) * capacity;
  };

/** How many pieces of one size a piece takes the place of; a large one by what it leaves. */
export const inPieces =
  (capacity: number, piece: number): DualFeasibleFunction =>
  (size) => {
    const all = Math.floor(capacity / piece);
    if (2 * size > capacity) return 2 * (all - Math.floor((capacity - size) / piece));
    return 2 * size === capacity ? all : 2 * Math.floor(size / piece);
  };
