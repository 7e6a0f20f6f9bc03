import { closest, distance } from "fastest-levenshtein";

/** A typo changes few letters. More changes, or one in a short word, usually mean another word. */
const MAX_TYPOS = 2;
const LETTERS_PER_TYPO = 3;

/** The known word closest to a misspelled one; undefined if none is close. */
export const closestWord = (word: string, known: readonly string[]): string | undefined => {
  const near = closest(word, known);
  const maxTypos = Math.min(MAX_TYPOS, Math.floor(word.length / LETTERS_PER_TYPO));
  return distance(word, near) <= maxTypos ? near : undefined;
};
