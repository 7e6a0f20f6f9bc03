import { LEVELS, type Level } from "../../../functions/practice/level";
import { measuringOf, UNITS, type Units } from "../../../functions/practice/measuring";
import { columnOf } from "../../workbook/address";
import {
  isWholeUpTo,
  LIMITS,
  topicNumbers,
  versionLetters,
  type ProblemSet,
  type VersionOptions,
} from "../classOptions";
import { carriedOn } from "../course/carriedOn";
import { courseSessions } from "../course/courseProblems";
import { distinctVersions, type Draw } from "./distinctProblems";
import { drawProblem } from "./drawProblem";
import type { Problem } from "../problem";
import { TOPIC_IDS, type TopicId } from "../topicTitles";
import { TOPICS } from "../topics/index";

/** The versions of the class that was asked for last: each needs those before it, and a class is built and marked in turn. */
let latest:
  | { readonly key: string; readonly drawn: Problem[][]; readonly rest: Iterator<Problem[], never> }
  | undefined;

const drawsOf = ({ seed, level, units, version, set }: VersionOptions): Draw[] => {
  const setting = { level, measuring: measuringOf(units, level) };
  const drawn = (name: readonly (string | number)[], drawsBefore: number): string =>
    [seed, versionLetters(version), ...name, level, units, ...(drawsBefore > 0 ? [drawsBefore] : [])].join(
      "/",
    );
  if (set.kind === "course")
    return [(drawsBefore) => courseSessions(drawn(["course"], drawsBefore), setting).flat()];
  return Array.from({ length: set.problems }, (_, index): Draw => {
    const topic = set.topics[index % set.topics.length] as TopicId;
    return (drawsBefore) => [drawProblem(TOPICS[topic], drawn([index + 1, topic], drawsBefore), setting)];
  });
};

/** A version's problems, in their order. */
export const problemsOf = ({ version, ...options }: VersionOptions): Problem[] => {
  const key = JSON.stringify(options);
  if (latest?.key !== key)
    latest = { key, drawn: [], rest: distinctVersions((each) => drawsOf({ ...options, version: each })) };
  const { drawn, rest } = latest;
  while (drawn.length <= version) {
    const problems = rest.next().value;
    drawn.push(options.set.kind === "course" ? carriedOn(problems) : problems);
  }
  return drawn[version] as Problem[];
};

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

/** Everything that makes a version, as it is printed on each of its sheets. */
export const classLine = ({ version, ...options }: VersionOptions): string =>
  lineOf(options, `version ${versionLetters(version)}`);

/** What all versions of a class have in common, in the same words. */
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

/** The options of a line that was printed; undefined where it is none. */
export const readClassLine = (line: string): VersionOptions | undefined => {
  const [, seed, letters = "", level, units, problems, numbers = ""] = LINE.exec(line.trim()) ?? [];
  const set = readSet(problems, numbers);
  const version = columnOf(letters);
  if (seed === undefined || !set || version >= LIMITS.versions) return undefined;
  return { seed, version, level: level as Level, units: units as Units, set };
};
