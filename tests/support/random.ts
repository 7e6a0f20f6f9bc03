/** A stream of numbers from 0 to less than 1, the same for the same seed (mulberry32, public domain). */
export type Random = () => number;

export const randomFrom = (seed: number): Random => {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
};

export const wholeBetween = (random: Random, least: number, most: number): number =>
  least + Math.floor(random() * (most - least + 1));

export const oneOf = <T>(random: Random, items: readonly T[]): T =>
  items[Math.floor(random() * items.length)] as T;
