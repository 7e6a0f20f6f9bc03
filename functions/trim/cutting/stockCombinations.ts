import type { StockLength } from "./trimJob";

/** Every combination of `count` stock lengths within their limits, given and yielded longest first. */
export function* stockCombinations(
  stocks: readonly (readonly [place: number, stock: StockLength])[],
  count: number,
): Generator<number[]> {
  const [first, ...shorter] = stocks;
  if (!first) {
    if (count === 0) yield [];
    return;
  }
  const [place, { limit }] = first;
  for (let taken = Math.min(count, limit); taken >= 0; taken--)
    for (const rest of stockCombinations(shorter, count - taken))
      yield [...Array.from({ length: taken }, () => place), ...rest];
}
