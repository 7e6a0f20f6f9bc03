import type { Level } from "../../../functions/practice/level";
import type { Units } from "../../../functions/practice/measuring";
import { InputError } from "../../../shared/inputError";
import { columnLetters } from "../../workbook/address";
import { TOPIC_IDS, type TopicId } from "../topics/index";

/** Problems by topic, in rotation; or the full-day course on one roof. */
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

/** One version of a class, counted from 0: A, B, C... */
export interface VersionOptions extends Omit<ClassOptions, "versions"> {
  readonly version: number;
}

export const LIMITS = { problems: 60, versions: 60 } as const;

const SEED = /^[A-Za-z0-9-]{1,20}$/;

const refuseUnless = (isTrue: boolean, message: string): void => {
  if (!isTrue) throw new InputError(message);
};

export const isWholeUpTo = (value: number, max: number): boolean =>
  Number.isInteger(value) && value >= 1 && value <= max;

const describeCount = (count: number): string => (Number.isNaN(count) ? "no number" : String(count));

/** Throws a message for the user where a class can't be made from these options. */
export const checkClass = ({ seed, set, versions }: ClassOptions): void => {
  refuseUnless(
    SEED.test(seed),
    `The seed must be 1 to 20 letters, digits and hyphens, got "${seed.slice(0, 40)}".`,
  );
  refuseUnless(
    isWholeUpTo(versions, LIMITS.versions),
    `The number of versions must be a whole number from 1 to ${LIMITS.versions}, got ${describeCount(versions)}.`,
  );
  if (set.kind === "course") return;
  refuseUnless(set.topics.length > 0, "Pick at least one topic.");
  refuseUnless(
    isWholeUpTo(set.problems, LIMITS.problems),
    `The number of problems must be a whole number from 1 to ${LIMITS.problems}, got ${describeCount(set.problems)}.`,
  );
};

/** Topics by their numbers, as printed in file names and on every sheet. */
export const topicNumbers = (topics: readonly TopicId[]): readonly number[] =>
  topics.map((id) => TOPIC_IDS.indexOf(id) + 1);

/** The name of a class's files: a course and other sets with the same seed get different names. */
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
