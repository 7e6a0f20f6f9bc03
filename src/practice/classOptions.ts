import type { Level } from "../../functions/practice/level";
import type { Units } from "../../functions/practice/measuring";
import { InputError } from "../../shared/inputError";
import { columnLetters } from "../workbook/address";
import { TOPIC_IDS, type TopicId } from "./topicTitles";

/** Problems by topic, in turn; or the full day's course of one roof. */
export type ProblemSet =
  | { readonly kind: "topics"; readonly topics: readonly TopicId[]; readonly problems: number }
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

export const isWholeUpTo = (value: number, most: number): boolean =>
  Number.isInteger(value) && value >= 1 && value <= most;

const inWords = (count: number): string => (Number.isNaN(count) ? "no number" : String(count));

/** Says in a sentence what a class can't be made of. */
export const checkClass = ({ seed, set, versions }: ClassOptions): void => {
  refuseUnless(
    SEED.test(seed),
    `The seed takes 1 to 20 letters, digits and hyphens, got "${seed.slice(0, 40)}".`,
  );
  refuseUnless(
    isWholeUpTo(versions, LIMITS.versions),
    `The number of versions is a whole number from 1 to ${LIMITS.versions}, got ${inWords(versions)}.`,
  );
  if (set.kind === "course") return;
  refuseUnless(set.topics.length > 0, "Pick at least one topic.");
  refuseUnless(
    isWholeUpTo(set.problems, LIMITS.problems),
    `The number of problems is a whole number from 1 to ${LIMITS.problems}, got ${inWords(set.problems)}.`,
  );
};

/** As they are printed: in a file's name, and on every sheet. */
export const topicNumbers = (topics: readonly TopicId[]): readonly number[] =>
  topics.map((id) => TOPIC_IDS.indexOf(id) + 1);

/** What a class's files are called: a course, and problems by one topic or another, may have the same seed. */
export const fileTitle = ({ seed, set }: Pick<ClassOptions, "seed" | "set">): string => {
  if (set.kind === "course") return `course-${seed}`;
  const [topic, ...others] = set.topics;
  if (topic !== undefined && others.length === 0) return `${topic.replaceAll(" ", "-")}-${seed}`;
  const areAll = TOPIC_IDS.every((id) => set.topics.includes(id));
  return ["practice", seed, ...(areAll ? [] : ["topics", ...topicNumbers(set.topics)])].join("-");
};

export const versionLetters = (version: number): string => columnLetters(version);

export const versionsOf = ({ versions, ...options }: ClassOptions): VersionOptions[] =>
  Array.from({ length: versions }, (_, version) => ({ ...options, version }));
