/** No measurement is longer than this; longer text is rejected before any pattern reads it. */
const LONGEST_TEXT = 64;

const VULGAR_FRACTIONS: Readonly<Record<string, string>> = {
  "½": "1/2", "¼": "1/4", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8",
}; // prettier-ignore

/** One spelling for the many ways in which keyboards write primes, quotes, minus signs and fractions. */
export const tidyText = (text: string): string =>
  text.length > LONGEST_TEXT
    ? ""
    : text
        .replace(/[½¼¾⅛⅜⅝⅞]/g, (sign) => ` ${VULGAR_FRACTIONS[sign]}`)
        .replace(/[′’‘ʹ]/g, "'")
        .replace(/[″”“ʺ]|''/g, '"')
        .replace(/[−–]/g, "-")
        .replace(/\s+/g, " ")
        .trim()
        .toLowerCase();

/** A plain decimal: `6`, `6.5`, `.5`. */
export const readDecimal = (text: string): number | undefined =>
  /^(?:\d+(?:\.\d*)?|\.\d+)$/.test(text) ? Number(text) : undefined;

/** An amount as a tape gives it: a decimal, or a whole number and a fraction (`6 1/2`, `6-1/2`, `1/2`). */
export const readAmount = (text: string): number | undefined => {
  const decimal = readDecimal(text);
  if (decimal !== undefined) return decimal;
  const mixed = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(text);
  if (!mixed) return undefined;
  const [, whole = "0", numerator, denominator] = mixed;
  return Number(denominator) > 0 ? Number(whole) + Number(numerator) / Number(denominator) : undefined;
};

/**
 * A tidied text's sign, and the text after it. A text is read without its sign, whatever its form, so that a bound can
 * say what is wrong with a negative amount.
 */
export const splitSign = (text: string): { sign: 1 | -1; unsigned: string } => ({
  sign: text.startsWith("-") ? -1 : 1,
  unsigned: text.replace(/^[+-] ?/, ""),
});

/** The amount with its sign; nothing is never negative. */
export const signed = (sign: 1 | -1, amount: number): number => sign * amount + 0;

/** Like `readAmount`, with a sign allowed. */
export const readSignedAmount = (text: string): number | undefined => {
  const { sign, unsigned } = splitSign(text);
  const amount = readAmount(unsigned);
  return amount === undefined ? undefined : signed(sign, amount);
};
