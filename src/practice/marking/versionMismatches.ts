import { versionLetters, versionsOf, type ClassOptions } from "../classOptions";
import { problemsOf } from "../class/practiceClass";
import type { Problem } from "../problem";
import { dealt } from "./pastedAnswers";
import { shortList } from "./shortList";
import { markStudent, type HandedIn } from "./student";

/** So little of what somebody wrote is right by chance, where it answers other problems. */
const HARDLY_ANY = 0.2;
/** So much isn't. */
const CLEARLY = 0.5;
/** Of fewer answers, all may be wrong without any doubt. */
const FEWEST_WRITTEN = 6;
/** So many whose answers fit no version tell that the class is another one. */
const TELLING = 5;

/** The share that is right of what was written; undefined where too little was to tell by. */
const shareRight = (student: HandedIn): number | undefined => {
  const written = markStudent(student).answers.filter(({ verdict }) => verdict !== "blank");
  return written.length < FEWEST_WRITTEN
    ? undefined
    : written.filter(({ verdict }) => verdict === "right").length / written.length;
};

const asIfOf = (student: HandedIn, problems: readonly Problem[]): HandedIn => ({
  ...student,
  problems,
  typed: dealt(problems, student.typed.flat()),
});

interface Version {
  readonly letters: string;
  readonly problems: readonly Problem[];
}

/** The letters of the version that the answers are clearly of; undefined where there is none. */
const fittingVersion = (student: HandedIn, versions: readonly Version[]): string | undefined =>
  versions.find(({ problems }) => (shareRight(asIfOf(student, problems)) ?? 0) >= CLEARLY)?.letters;

/**
 * Which version each fits, in turn. Once so many have fitted none the class is another one, and no more are held against each
 * of its versions: for a large class that would take many seconds.
 */
const fittingVersions = (students: readonly HandedIn[], options: ClassOptions): (string | undefined)[] => {
  if (students.length === 0) return [];
  const versions = versionsOf(options).map((version) => ({
    letters: versionLetters(version.version),
    problems: problemsOf(version),
  }));
  let fittedNone = 0;
  return students.map((student) => {
    if (fittedNone >= TELLING) return undefined;
    const fitting = fittingVersion(student, versions);
    if (fitting === undefined) fittedNone++;
    return fitting;
  });
};

/** Sentences on students who have hardly anything right: they may have had another version, or the class is another one. */
export const misfits = (handedIn: readonly HandedIn[], options: ClassOptions): readonly string[] => {
  const students = handedIn.filter((student) => (shareRight(student) ?? 1) < HARDLY_ANY);
  const fits = fittingVersions(students, options);
  const doubtful = students.map(({ name, version }, index) => ({
    name,
    had: versionLetters(version.version),
    fits: fits[index],
  }));
  const fitting = doubtful.flatMap(({ name, had, fits }) => (fits ? [`${name} (${fits}, not ${had})`] : []));
  const others = doubtful.flatMap(({ name, fits }) => (fits ? [] : [name]));
  return [
    ...(fitting.length > 0
      ? [`Some answers fit another version than the one that is given for them: ${shortList(fitting)}.`]
      : []),
    ...(others.length > 0
      ? [
          `Hardly anything is right of what ${shortList(others)} wrote: see that the seed and the choices of the class are those printed on the sheets.`,
        ]
      : []),
  ];
};
