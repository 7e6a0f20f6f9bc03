import { closest, distance } from "fastest-levenshtein";

/** A slip of the keyboard changes few letters; more of them, or one in a short word, make another word. */
const MOST_SLIPS = 2;
const LETTERS_FOR_EACH_SLIP = 3;

/** The known word that a person may have meant by one that isn't; undefined where none is near. */
export const nearWord = (word: string, known: readonly string[]): string | undefined => {
  const near = closest(word, known);
  const mostSlips = Math.min(MOST_SLIPS, Math.floor(word.length / LETTERS_FOR_EACH_SLIP));
  return distance(word, near) <= mostSlips ? near : undefined;
};
