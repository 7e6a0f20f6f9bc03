import { versionLetters, versionsOf, type ClassOptions } from "../classOptions";
import { problemsOf } from "../practiceClass";
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

/** The letters of the version that the answers are clearly of; undefined where there is none. */
const fittingVersion = (student: HandedIn, options: ClassOptions): string | undefined => {
  const fitting = versionsOf(options).find(
    (version) => (shareRight(asIfOf(student, problemsOf(version))) ?? 0) >= CLEARLY,
  );
  return fitting && versionLetters(fitting.version);
};

/** Sentences on students who have hardly anything right: they may have had another version, or the class is another one. */
export const misfits = (handedIn: readonly HandedIn[], options: ClassOptions): readonly string[] => {
  const doubtful = handedIn
    .filter((student) => (shareRight(student) ?? 1) < HARDLY_ANY)
    .map((student) => ({
      name: student.name,
      had: versionLetters(student.version.version),
      fits: fittingVersion(student, options),
    }));
  const fitting = doubtful.flatMap(({ name, had, fits }) => (fits ? [`${name} (${fits}, not ${had})`] : []));
  const others = doubtful.flatMap(({ name, fits }) => (fits ? [] : [name]));
  return [
    ...(fitting.length > 0
      ? [`Some answers fit another version than the one that is given for them: ${shortList(fitting)}.`]
      : []),
    ...(others.length > 0
      ? [
          `Hardly anything is right of what ${shortList(others)} wrote, whichever version it is held against: see that the seed and the choices of the class are those printed on the sheets.`,
        ]
      : []),
  ];
};
