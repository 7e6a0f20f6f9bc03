import { practiceFiles, type NamedFile } from "../../src/practice/files/practiceFiles";
import { openXlsx } from "../../src/xlsx/xlsxFile";
import { readStudentFile } from "../../src/practice/marking/readStudentFile";
import { markStudent } from "../../src/practice/marking/markStudent";
import type { ClassOptions } from "../../src/practice/class/classOptions";
import { TOPIC_IDS } from "../../src/practice/topics/index";
import { markingSheets } from "../../src/practice/marking/markingSheets";
import type { BenchRow } from "./measure";

const STUDENTS = 30;
const BUILT_WITHIN_MS = 10_000;
const MARKED_WITHIN_MS = 5_000;

const CLASS: ClassOptions = {
  seed: "2611",
  level: "full roof",
  units: "feet and inches",
  set: { kind: "topics", topics: TOPIC_IDS, problems: 12 },
  versions: STUDENTS,
};

const timed = <T>(run: () => T): { readonly ms: number; readonly result: T } => {
  const before = performance.now();
  const result = run();
  return { ms: performance.now() - before, result };
};

const mark = (files: readonly NamedFile[]): void => {
  const students = files.map(({ name, bytes }) => markStudent(readStudentFile(openXlsx(bytes).book, name)));
  markingSheets(students, { grid: "Class", answers: "Answers" }, "2026-06-01");
};

/** A whole class, once, without a warm-up, as an instructor waits for it: 30 students with 12 problems each. */
export const practiceBench = (): BenchRow[] => {
  const built = timed(() => [...practiceFiles(CLASS)]);
  const marked = timed(() => {
    mark(built.result.slice(0, STUDENTS));
  });
  const rowOf = (name: string, ms: number, limitMs: number): BenchRow => ({
    name,
    size: STUDENTS,
    ms,
    ratio: 1,
    limitMs,
  });
  return [
    rowOf("practice: a class of 30 built, 12 problems each", built.ms, BUILT_WITHIN_MS),
    rowOf("practice: the class marked", marked.ms, MARKED_WITHIN_MS),
  ];
};
