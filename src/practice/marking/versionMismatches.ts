import { versionLetters, versionsOf, type ClassOptions } from "../class/classOptions";
import { problemsOf } from "../class/practiceClass";
import type { Problem } from "../problems/problem";
import { listNames } from "./listNames";
import { markStudent, type Submission } from "./markStudent";
import { answersByProblem } from "./pastedAnswers";

/** At most this fraction of answers is right by chance when they answer other problems. */
const RIGHT_BY_CHANCE = 0.2;
/** From this fraction on, the answers belong to the version. */
const CLEARLY_RIGHT = 0.5;
/** With fewer answers, all may be wrong without a mix-up. */
const MIN_ANSWERS = 6;
/** After this many students who fit no version, the class itself is another one. */
const MAX_WITHOUT_VERSION = 5;

/** The fraction of a student's answers that is right; undefined with too few answers to tell. */
const fractionRight = (student: Submission): number | undefined => {
  const answered = markStudent(student).answers.filter(({ verdict }) => verdict !== "blank");
  return answered.length < MIN_ANSWERS
    ? undefined
    : answered.filter(({ verdict }) => verdict === "right").length / answered.length;
};

const withProblems = (student: Submission, problems: readonly Problem[]): Submission => ({
  ...student,
  problems,
  answers: answersByProblem(problems, student.answers.flat()),
});

interface Version {
  readonly letters: string;
  readonly problems: readonly Problem[];
}

/** The letters of the version that the answers clearly belong to, if any. */
const matchingVersion = (student: Submission, versions: readonly Version[]): string | undefined =>
  versions.find(({ problems }) => (fractionRight(withProblems(student, problems)) ?? 0) >= CLEARLY_RIGHT)
    ?.letters;

/** The version each student's answers belong to. Stops trying once the class is clearly another one: in a large class each try is slow. */
const matchingVersions = (students: readonly Submission[], options: ClassOptions): (string | undefined)[] => {
  if (students.length === 0) return [];
  const versions = versionsOf(options).map((version) => ({
    letters: versionLetters(version.version),
    problems: problemsOf(version),
  }));
  let withoutVersion = 0;
  return students.map((student) => {
    if (withoutVersion >= MAX_WITHOUT_VERSION) return undefined;
    const matching = matchingVersion(student, versions);
    if (matching === undefined) withoutVersion++;
    return matching;
  });
};

/** Notes on students with hardly any right answers: they may have had another version, or the class may be another one. */
export const versionMismatches = (
  submissions: readonly Submission[],
  options: ClassOptions,
): readonly string[] => {
  const students = submissions.filter((student) => (fractionRight(student) ?? 1) < RIGHT_BY_CHANCE);
  const matching = matchingVersions(students, options);
  const mixedUp = students.flatMap(({ name, version }, index) =>
    matching[index] ? [`${name} (${matching[index]}, not ${versionLetters(version.version)})`] : [],
  );
  const others = students.flatMap(({ name }, index) => (matching[index] ? [] : [name]));
  return [
    ...(mixedUp.length > 0
      ? [`Some answers match another version than the one in their row: ${listNames(mixedUp)}.`]
      : []),
    ...(others.length > 0
      ? [
          `Hardly any answers of ${listNames(others)} are right: check that the class's seed and choices match those printed on the sheets.`,
        ]
      : []),
  ];
};
