import type { StockLength } from "./trimJob";

/** Every choice of so many stock lengths, a length no oftener than there are of it; the longest ones first. */
export function* stockChoices(
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
    for (const rest of stockChoices(shorter, count - taken))
      yield [...Array.from({ length: taken }, () => place), ...rest];
}
