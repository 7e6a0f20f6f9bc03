import { LEVELS, type Level } from "../../../functions/practice/level";
import { UNITS, type Units } from "../../../functions/practice/measuring";
import { columnOf } from "../../workbook/address";
import { TOPIC_IDS } from "../topics/index";
import {
  isWholeUpTo,
  LIMITS,
  topicNumbers,
  versionLetters,
  type ProblemSet,
  type VersionOptions,
} from "./classOptions";

const COURSE = "full-day course";

const lineOf = (
  { seed, level, units, set }: Omit<VersionOptions, "version">,
  ...version: readonly string[]
): string =>
  [
    `Seed ${seed}`,
    ...version,
    level,
    units,
    ...(set.kind === "course"
      ? [COURSE]
      : [`${set.problems} problems`, `topics ${topicNumbers(set.topics).join(" ")}`]),
  ].join(" · ");

/**
 * Everything that makes a version, as printed on each of its sheets. Marking reads it back, so its wording never changes:
 * sheets already handed out must stay readable.
 */
export const classLine = ({ version, ...options }: VersionOptions): string =>
  lineOf(options, `version ${versionLetters(version)}`);

/** The class line without the version: the same for all versions of a class. */
export const sharedClassLine = (options: Omit<VersionOptions, "version">): string => lineOf(options);

const LINE = new RegExp(
  `^Seed ([A-Za-z0-9-]{1,20}) · version ([A-Z]{1,2}) · (${LEVELS.join("|")}) · (${UNITS.join("|")}) · (?:${COURSE}|(\\d{1,2}) problems · topics ((?:\\d{1,2} ?)+))$`,
);

const readSet = (problems: string | undefined, numbers: string): ProblemSet | undefined => {
  if (problems === undefined) return { kind: "course" };
  const topics = numbers
    .trim()
    .split(" ")
    .map((number) => TOPIC_IDS[Number(number) - 1]);
  return topics.every((id) => id !== undefined) && isWholeUpTo(Number(problems), LIMITS.problems)
    ? { kind: "topics", topics, problems: Number(problems) }
    : undefined;
};

/** The version that a printed class line names; undefined for any other text. */
export const readClassLine = (line: string): VersionOptions | undefined => {
  const [, seed, letters = "", level, units, problems, numbers = ""] = LINE.exec(line.trim()) ?? [];
  const set = readSet(problems, numbers);
  const version = columnOf(letters);
  if (seed === undefined || !set || version >= LIMITS.versions) return undefined;
  return { seed, version, level: level as Level, units: units as Units, set };
};
