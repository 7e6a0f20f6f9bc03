import { LEVELS, type Level } from "../../functions/practice/level";
import { measuringOf, UNITS, type Units } from "../../functions/practice/measuring";
import { InputError } from "../../shared/inputError";
import { columnLetters, columnOf } from "../sheets/address";
import { drawProblem } from "./drawProblem";
import type { Problem, Topic } from "./problem";
import { TOPICS } from "./topics/index";

/** What makes a class: the same options make the same class. */
export interface ClassOptions {
  readonly seed: string;
  readonly level: Level;
  readonly units: Units;
  /** By their ids; the problems go through them in turn. */
  readonly topics: readonly string[];
  readonly problems: number;
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
export const checkClass = ({ seed, topics, problems, versions }: ClassOptions): void => {
  refuseUnless(
    SEED.test(seed),
    `The seed takes 1 to 20 letters, digits and hyphens, got "${seed.slice(0, 40)}".`,
  );
  refuseUnless(topics.length > 0, "Pick at least one topic.");
  refuseUnless(
    isWholeUpTo(problems, LIMITS.problems),
    `The number of problems is a whole number from 1 to ${LIMITS.problems}, got ${problems}.`,
  );
  refuseUnless(
    isWholeUpTo(versions, LIMITS.versions),
    `The number of versions is a whole number from 1 to ${LIMITS.versions}, got ${versions}.`,
  );
};

export const versionLetters = (version: number): string => columnLetters(version);

export const versionsOf = ({ versions, ...options }: ClassOptions): VersionOptions[] =>
  Array.from({ length: versions }, (_, version) => ({ ...options, version }));

const topicAt = ({ topics }: VersionOptions, index: number): Topic => {
  const id = topics[index % topics.length];
  const topic = TOPICS.find((each) => each.id === id);
  if (!topic) throw new InputError(`There is no topic "${id}".`);
  return topic;
};

/** A version's problems, in their order. */
export const problemsOf = (options: VersionOptions): Problem[] => {
  const { seed, level, units, version } = options;
  const setting = { level, measuring: measuringOf(units, level) };
  return Array.from({ length: options.problems }, (_, index) => {
    const topic = topicAt(options, index);
    const ownSeed = [seed, versionLetters(version), index + 1, topic.id, level, units].join("/");
    return drawProblem(topic, ownSeed, setting);
  });
};

/** Everything that makes a version, as it is printed on each of its sheets. */
export const classLine = ({ seed, version, level, units, problems, topics }: VersionOptions): string =>
  [
    `Seed ${seed}`,
    `version ${versionLetters(version)}`,
    level,
    units,
    `${problems} problems`,
    `topics ${topics.map((id) => TOPICS.findIndex((topic) => topic.id === id) + 1).join(" ")}`,
  ].join(" · ");

const LINE = new RegExp(
  `^Seed ([A-Za-z0-9-]{1,20}) · version ([A-Z]{1,2}) · (${LEVELS.join("|")}) · (${UNITS.join("|")}) · (\\d{1,2}) problems · topics ((?:\\d{1,2} ?)+)$`,
);

/** The options of a line that was printed; undefined where it is none. */
export const readClassLine = (line: string): VersionOptions | undefined => {
  const [, seed, letters = "", level, units, problems = "", numbers = ""] = LINE.exec(line.trim()) ?? [];
  if (seed === undefined) return undefined;
  const topics = numbers
    .trim()
    .split(" ")
    .map((number) => TOPICS[Number(number) - 1]?.id);
  const version = columnOf(letters);
  if (topics.includes(undefined) || !isWholeUpTo(Number(problems), LIMITS.problems)) return undefined;
  if (version >= LIMITS.versions) return undefined;
  return {
    seed,
    version,
    level: level as Level,
    units: units as Units,
    problems: Number(problems),
    topics: topics as string[],
  };
};
