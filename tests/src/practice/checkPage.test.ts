import type { Cell } from "../../../shared/cell";
import { checkPage } from "../../../src/practice/marking/checkPage";
import type { VersionOptions } from "../../../src/practice/classOptions";
import { problemsOf } from "../../../src/practice/class/practiceClass";
import type { ActiveSheet } from "../../../src/workbook/activeSheet";
import { studentSheets } from "../../../src/practice/sheets/studentSheets";

const VERSION: VersionOptions = {
  seed: "9",
  version: 0,
  level: "half day",
  units: "feet and inches",
  set: { kind: "topics", topics: ["courses", "starters"], problems: 2 },
};

const problems = problemsOf(VERSION);
const page = studentSheets(
  problems.map(({ question }) => question),
  VERSION,
).problems[1];

/** The second page as a host reads it, with answers typed in. */
const pageWith = (...answers: readonly Cell[]): ActiveSheet => {
  const cells: Cell[][] = Array.from({ length: 80 }, () => [null, null, null, null]);
  const put = ({ row, column }: { row: number; column: number }, value: Cell): void => {
    (cells[row] as Cell[])[column] = value;
  };
  for (const cell of page?.sheet.cells ?? []) if (cell.content?.kind === "text") put(cell, cell.content.text);
  page?.answerPlaces.forEach((place, index) => {
    put(place, answers[index] ?? null);
  });
  return { sheet: page?.sheet.name ?? "", selected: { row: 0, column: 0 }, cells };
};

describe("the page in front", () => {
  const [cover, blank] = problems[1]?.solution.answers ?? [];

  it("is checked, and no answer told", () => {
    const checked = checkPage(pageWith(cover?.shown ?? "", blank?.mistakes[0]?.shown ?? ""));
    expect(checked.map(({ verdict }) => verdict)).toEqual(["right", "near", "blank"]);
    for (const { label } of checked) expect(label).not.toContain(cover?.shown ?? "?");
  });

  it("isn't checked where its text was changed, or where it is no page", () => {
    const changed = pageWith();
    (changed.cells[3] as Cell[])[0] = "easier";
    expect(() => checkPage(changed)).toThrow("This page isn't as it was given out, so it can't be checked.");
    expect(() => checkPage({ ...changed, cells: [["Bid"]] })).toThrow(
      "The sheet in front is no problem of a practice workbook: open one, and go to a problem's page.",
    );
  });
});
