import type { Cell } from "../../../shared/cell";
import { shortList } from "./shortList";
import type { HandedIn } from "./student";

const inWords = (name: string, answers: readonly Cell[]): readonly string[] => {
  const filled = answers.findLastIndex((answer) => answer !== null) + 1;
  return filled === answers.length ? [] : [`${name} (${filled} of ${answers.length})`];
};

/** A sentence on the pasted rows that end before the last answer: a row may have been cut off, or slipped. */
export const shortRows = (handedIn: readonly Pick<HandedIn, "name" | "typed">[]): readonly string[] => {
  const short = handedIn.flatMap(({ name, typed }) => inWords(name, typed.flat()));
  return short.length === 0
    ? []
    : [`Some rows end before the last answer, and what is missing counts as blank: ${shortList(short)}.`];
};
