import { InputError } from "../../../shared/inputError";
import { valueAt } from "../../workbook/contents";
import type { ActiveSheet } from "../../workbook/activeSheet";
import { isAsPrinted } from "../sheets/problemSheet";
import { markAnswer, type Verdict } from "./markAnswer";
import { pageInView } from "./pageInView";

export interface CheckedAnswer {
  readonly label: string;
  readonly verdict: Verdict;
}

/** Checks the page in front, and tells no answer. The file itself holds nothing to check with. */
export const checkPage = (view: ActiveSheet): CheckedAnswer[] => {
  const inView = pageInView(view);
  if (!inView)
    throw new InputError(
      "The sheet in front is no problem of a practice workbook: open one, and go to a problem's page.",
    );
  const { problem, page } = inView;
  if (!isAsPrinted(page, (place) => valueAt(view, place)))
    throw new InputError("This page isn't as it was given out, so it can't be checked.");
  return page.answerPlaces.flatMap((place, index) => {
    const answer = problem.solution.answers[index];
    if (!answer) return [];
    return [{ label: answer.field.label, verdict: markAnswer(answer, valueAt(view, place)).verdict }];
  });
};
