import { LEVELS, type Level } from "../../functions/practice/level";
import { measuringOf, UNITS, type Units } from "../../functions/practice/measuring";
import { InputError } from "../../shared/inputError";
import { columnLetters, columnOf } from "../sheets/address";
import { courseSessions } from "./course/courseProblems";
import { drawProblem } from "./drawProblem";
import type { Problem, Topic } from "./problem";
import { TOPICS } from "./topics/index";

/** Problems by topic, in turn; or the full day's course of one roof. */
export type ProblemSet =
  | { readonly kind: "topics"; readonly topics: readonly string[]; readonly problems: number }
  | { readonly kind: "course" };

/** What makes a class: the same options make the same class. */
export interface ClassOptions {
  readonly seed: string;
  readonly level: Level;
  readonly units: Units;
  readonly set: ProblemSet;
  readonly versions: number;
}

/** One student's version of a class, counted from 0: A, B, C... */
export interface VersionOptions extends Omit<ClassOptions, "versions"> {
  readonly version: number;
}

export const LIMITS = { problems: 60, versions: 60 } as const;

const SEED = /^[A-Za-z0-9-]{1,20}$/;

const refuseUnless = (isTrue: boolean, sentence: string): void => {
  if (!isTrue) throw new InputError(sentence);
};

const isWholeUpTo = (value: number, most: number): boolean =>
  Number.isInteger(value) && value >= 1 && value <= most;

/** Says in a sentence what a class can't be made of. */
export const checkClass = ({ seed, set, versions }: ClassOptions): void => {
  refuseUnless(
    SEED.test(seed),
    `The seed takes 1 to 20 letters, digits and hyphens, got "${seed.slice(0, 40)}".`,
  );
  refuseUnless(
    isWholeUpTo(versions, LIMITS.versions),
    `The number of versions is a whole number from 1 to ${LIMITS.versions}, got ${versions}.`,
  );
  if (set.kind === "course") return;
  refuseUnless(set.topics.length > 0, "Pick at least one topic.");
  refuseUnless(
    isWholeUpTo(set.problems, LIMITS.problems),
    `The number of problems is a whole number from 1 to ${LIMITS.problems}, got ${set.problems}.`,
  );
};

export const versionLetters = (version: number): string => columnLetters(version);

export const versionsOf = ({ versions, ...options }: ClassOptions): VersionOptions[] =>
  Array.from({ length: versions }, (_, version) => ({ ...options, version }));

const topicOf = (id: string | undefined): Topic => {
  const topic = TOPICS.find((each) => each.id === id);
  if (!topic) throw new InputError(`There is no topic "${id}".`);
  return topic;
};

/** A version's problems, in their order. */
export const problemsOf = ({ seed, level, units, version, set }: VersionOptions): Problem[] => {
  const setting = { level, measuring: measuringOf(units, level) };
  const seedOf = (...what: readonly (string | number)[]): string =>
    [seed, versionLetters(version), ...what, level, units].join("/");
  if (set.kind === "course") return courseSessions(seedOf("course"), setting).flat();
  return Array.from({ length: set.problems }, (_, index) => {
    const topic = topicOf(set.topics[index % set.topics.length]);
    return drawProblem(topic, seedOf(index + 1, topic.id), setting);
  });
};

const COURSE = "full-day course";

const numbersOf = (topics: readonly string[]): string =>
  topics.map((id) => TOPICS.findIndex((topic) => topic.id === id) + 1).join(" ");

/** Everything that makes a version, as it is printed on each of its sheets. */
export const classLine = ({ seed, version, level, units, set }: VersionOptions): string =>
  [
    `Seed ${seed}`,
    `version ${versionLetters(version)}`,
    level,
    units,
    ...(set.kind === "course" ? [COURSE] : [`${set.problems} problems`, `topics ${numbersOf(set.topics)}`]),
  ].join(" · ");

const LINE = new RegExp(
  `^Seed ([A-Za-z0-9-]{1,20}) · version ([A-Z]{1,2}) · (${LEVELS.join("|")}) · (${UNITS.join("|")}) · (?:${COURSE}|(\\d{1,2}) problems · topics ((?:\\d{1,2} ?)+))$`,
);

const readSet = (problems: string | undefined, numbers: string): ProblemSet | undefined => {
  if (problems === undefined) return { kind: "course" };
  const topics = numbers
    .trim()
    .split(" ")
    .map((number) => TOPICS[Number(number) - 1]?.id);
  return topics.every((id) => id !== undefined) && isWholeUpTo(Number(problems), LIMITS.problems)
    ? { kind: "topics", topics, problems: Number(problems) }
    : undefined;
};

/** The options of a line that was printed; undefined where it is none. */
export const readClassLine = (line: string): VersionOptions | undefined => {
  const [, seed, letters = "", level, units, problems, numbers = ""] = LINE.exec(line.trim()) ?? [];
  const set = readSet(problems, numbers);
  const version = columnOf(letters);
  if (seed === undefined || !set || version >= LIMITS.versions) return undefined;
  return { seed, version, level: level as Level, units: units as Units, set };
};
