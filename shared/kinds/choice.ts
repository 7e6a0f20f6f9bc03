import { tidyText } from "../amountText";
import { notTaken } from "./bounds";
import type { CellKind } from "./kind";

/** One of a few words; letter case and outer spaces don't matter. */
export const choice = <const W extends string>(words: readonly W[]): CellKind<W> => {
  const takes = `one of ${words.join(", ")}`;
  return {
    shape: "cell",
    takes,
    read: (cell, label) => {
      const typed = typeof cell === "string" ? tidyText(cell) : undefined;
      const word = words.find((each) => each === typed);
      if (word === undefined) throw notTaken(label, takes, cell);
      return word;
    },
  };
};

/** One of a few numbers, such as the denominators of a tape. */
export const numberChoice = (numbers: readonly number[]): CellKind<number> => {
  const takes = `one of ${numbers.join(", ")}`;
  return {
    shape: "cell",
    takes,
    read: (cell, label) => {
      const value = typeof cell === "string" ? Number(tidyText(cell) || NaN) : cell;
      const match = numbers.find((each) => each === value);
      if (match === undefined) throw notTaken(label, takes, cell);
      return match;
    },
  };
};
