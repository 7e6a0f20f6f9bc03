import { InputError } from "../../../shared/inputError";
import type { ActiveSheet } from "../../workbook/activeSheet";
import { valueAt } from "../../workbook/contents";
import { activeProblem } from "./activeProblem";
import { markAnswer, type Verdict } from "./markAnswer";
import { answersOnPage } from "./problemPage";

export interface CheckedAnswer {
  readonly label: string;
  readonly verdict: Verdict;
}

/** Marks the active page without showing the right answers. The file itself holds nothing to check against. */
export const checkPage = (view: ActiveSheet): CheckedAnswer[] => {
  const problem = activeProblem(view);
  if (!problem)
    throw new InputError(
      "The active sheet isn't a page of a practice workbook: open one, and go to a problem's page.",
    );
  const addresses = answersOnPage((address) => valueAt(view, address), problem.question);
  if (!addresses)
    throw new InputError("This page was changed after it was handed out, so it can't be checked.");
  return problem.solution.answers.map((answer, index) => {
    const address = addresses[index];
    const typed = address ? valueAt(view, address) : null;
    return { label: answer.field.label, verdict: markAnswer(answer, typed).verdict };
  });
};
