import { createHeadlessEngine } from "../../../src/hosts/local/workbook/headless";
import { localCatalog } from "../../../src/hosts/local/formulas/catalog";
import { addSheets } from "../../../src/hosts/local/cells/addSheets";
import { openXlsx, saveXlsx } from "../../../src/xlsx/xlsxFile";
import { pastedAnswers } from "../../../src/practice/marking/pastedAnswers";
import { duplicateNames } from "../../../src/practice/marking/duplicateNames";
import { markStudent } from "../../../src/practice/marking/markStudent";
import { problemsOf } from "../../../src/practice/class/practiceClass";
import { markingSheets } from "../../../src/practice/marking/markingSheets";
import { markingSummary } from "../../../src/practice/marking/markingSummary";
import { sheetData } from "../../../src/hosts/local/engine/planSnapshot";
import type { SheetPlan, WorkbookPlan } from "../../../src/workbook/plan";
import { openedUniver } from "../hosts/local/openedUniver";

jest.setTimeout(120_000);

const CLASS = {
  seed: "7",
  level: "half day",
  units: "feet and inches",
  set: { kind: "topics", topics: ["pitch"], problems: 2 },
  versions: 1,
} as const;

const shown = problemsOf({ ...CLASS, version: 0 }).flatMap(({ solution }) =>
  solution.answers.map((answer) => answer.shown),
);

const marks = (students: number): WorkbookPlan => {
  const lines = Array.from({ length: students }, (_, index) =>
    [`Student ${index + 1}`, "A", ...shown].join("\t"),
  );
  const { submissions } = pastedAnswers(lines.join("\n"), CLASS);
  const marked = submissions.map(markStudent);
  expect(duplicateNames(submissions)).toEqual([]);
  expect(markingSummary(marked)).toContain(
    `${students} students, ${students * shown.length} answers, 100 % right.`,
  );
  return markingSheets(marked, { grid: "Class", answers: "Class answers" }, "2026-06-01");
};

test("a sheet of the local workbook may have more answers than a call may have arguments", () => {
  const answers = marks(4_000).sheets[1] as SheetPlan;
  expect(answers.cells.length).toBeGreaterThan(200_000);
  expect(sheetData("answers", answers).rowCount).toBeGreaterThan(4_000 * shown.length);
});

test("five hundred students are written, undone, saved and opened", async () => {
  const plan = marks(500);
  const { univer, workbook, injector } = openedUniver([
    { name: "Bid", cells: [], columnWidths: [], rowHeights: {}, frozenRows: 0 },
  ]);
  const undo = await addSheets(injector, workbook, plan);
  expect(workbook.getSheets()).toHaveLength(3);
  await undo();
  expect(workbook.getSheets()).toHaveLength(1);
  univer.dispose();

  const engine = createHeadlessEngine(localCatalog, plan);
  await engine.calculated();
  const { book } = openXlsx(saveXlsx(undefined, engine.book()));
  engine.dispose();
  expect(book.sheets[1]?.cells.get(500 * shown.length)?.get(0)?.value).toBe("Student 500");
});
