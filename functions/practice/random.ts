const FNV_OFFSET = 2_166_136_261;
const FNV_PRIME = 16_777_619;
const WEYL_STEP = 0x6d2b79f5;
const TWO_TO_32 = 4_294_967_296;

/** Repeatable random draws: the same seed gives the same draws, in the same order, on every machine. */
export interface Random {
  /** A whole number from `least` to `most`, inclusive. */
  whole(least: number, most: number): number;
  pick<T>(list: readonly [T, ...T[]]): T;
}

/** FNV-1a over the text's UTF-16 units. */
const hash = (text: string): number => {
  let state = FNV_OFFSET;
  for (let at = 0; at < text.length; at++) state = Math.imul(state ^ text.charCodeAt(at), FNV_PRIME);
  return state;
};

/**
 * Mulberry32, in 32-bit integers. A class must come out the same years later, so these lines are our own: the next
 * version of a library may draw differently.
 */
export const randomOf = (seed: string): Random => {
  let state = hash(seed);
  const next = (): number => {
    state = (state + WEYL_STEP) | 0;
    let bits = Math.imul(state ^ (state >>> 15), state | 1);
    bits ^= bits + Math.imul(bits ^ (bits >>> 7), bits | 61);
    return ((bits ^ (bits >>> 14)) >>> 0) / TWO_TO_32;
  };
  const whole = (least: number, most: number): number => least + Math.floor(next() * (most - least + 1));
  return { whole, pick: <T>(list: readonly [T, ...T[]]): T => list[whole(0, list.length - 1)] as T };
};
