import type { Cell } from "../../../shared/cell";
import { listNames } from "./listNames";
import type { Submission } from "./markStudent";

const describeIncomplete = (name: string, answers: readonly Cell[]): readonly string[] => {
  const filled = answers.findLastIndex((answer) => answer !== null) + 1;
  return filled === answers.length ? [] : [`${name} (${filled} of ${answers.length})`];
};

/** A note on pasted rows that end before the last answer: a row may have been cut off or shifted. */
export const incompleteRows = (
  submissions: readonly Pick<Submission, "name" | "answers">[],
): readonly string[] => {
  const incomplete = submissions.flatMap(({ name, answers }) => describeIncomplete(name, answers.flat()));
  return incomplete.length === 0
    ? []
    : [`Some rows end before the last answer; missing answers count as blank: ${listNames(incomplete)}.`];
};
