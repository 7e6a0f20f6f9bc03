import { counted } from "../../../shared/describe";
import { classGrid } from "./classGrid";
import { listNames } from "./listNames";
import type { MarkedStudent } from "./markStudent";

const percent = (fraction: number): string => `${Math.round(fraction * 100)} %`;

const unmarkedPages = (students: readonly MarkedStudent[]): string => {
  const altered = students.filter(({ alteredProblems }) => alteredProblems.length > 0);
  const pages = altered.reduce((sum, { alteredProblems }) => sum + alteredProblems.length, 0);
  if (pages === 0) return "";
  const listed = altered.map(
    ({ name, alteredProblems: [first, ...others] }) =>
      `${name} (problem${others.length === 0 ? "" : "s"} ${[first, ...others].join(", ")})`,
  );
  const notMarked = pages === 1 ? "isn't marked because it was" : "aren't marked because they were";
  return ` ${counted(pages, "page")} ${notMarked} changed after being handed out: ${listNames(listed)}.`;
};

/** The marks in a few sentences, for the pane. */
export const markingSummary = (students: readonly MarkedStudent[]): string => {
  const { toReteach } = classGrid(students);
  const answers = students.flatMap((student) => student.answers);
  const right = answers.filter(({ verdict }) => verdict === "right").length;
  const share = answers.length === 0 ? "none asked" : `${percent(right / answers.length)} right`;
  const reteach =
    toReteach.length === 0 ? "" : ` Teach again: ${toReteach.map(({ topic }) => topic.title).join(", ")}.`;
  return `${counted(students.length, "student")}, ${counted(answers.length, "answer")}, ${share}.${unmarkedPages(students)}${reteach}`;
};
