import type { ActiveSheet } from "../../workbook/activeSheet";
import { valueAt } from "../../workbook/contents";
import { problemsOf } from "../class/practiceClass";
import type { Problem } from "../problems/problem";
import { problemNumberOn, versionOfPage } from "./problemPage";

/** The problem on the active sheet, made again from its class line; undefined where the sheet isn't a problem's page. */
export const activeProblem = (view: ActiveSheet): Problem | undefined => {
  const cellAt = valueAt.bind(undefined, view);
  const version = versionOfPage(cellAt);
  const number = problemNumberOn(cellAt);
  return version && number !== undefined ? problemsOf(version)[number - 1] : undefined;
};
