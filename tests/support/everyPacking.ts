/** The best of all ways to put pieces into stock lengths, tried one after the other. */
export interface BestPacking {
  readonly stocks: number;
  /** The longest left-over that so few stock lengths allow. */
  readonly leftOver: number;
}

/** With no kerf. Each piece goes into every stock length begun, or into a new one. */
export const everyPacking = (pieces: readonly number[], stock: number): BestPacking => {
  let best: BestPacking = { stocks: Infinity, leftOver: 0 };
  const place = (index: number, left: readonly number[]): void => {
    if (left.length > best.stocks) return;
    const piece = pieces[index];
    if (piece === undefined) {
      const leftOver = Math.max(0, ...left);
      if (left.length < best.stocks || leftOver > best.leftOver) best = { stocks: left.length, leftOver };
      return;
    }
    left.forEach((each, bin) => {
      if (each >= piece)
        place(
          index + 1,
          left.map((other, at) => (at === bin ? other - piece : other)),
        );
    });
    place(index + 1, [...left, stock - piece]);
  };
  place(0, []);
  return best;
};
