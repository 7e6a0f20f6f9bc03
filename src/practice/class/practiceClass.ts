import { measuringOf } from "../../../functions/practice/measuring";
import { carryAnswers } from "../course/carriedAnswers";
import { drawCourse } from "../course/courseProblems";
import { drawProblem } from "../problems/drawProblem";
import type { Problem } from "../problems/problem";
import type { TopicId } from "../topics/index";
import { versionLetters, type VersionOptions } from "./classOptions";
import { distinctVersions, type Draw } from "./distinctProblems";

/** The versions of the latest class: each one needs those before it, and a class is built and marked version by version. */
let latest:
  | { readonly key: string; readonly drawn: Problem[][]; readonly rest: Iterator<Problem[], never> }
  | undefined;

const drawsOf = ({ seed, level, units, version, set }: VersionOptions): Draw[] => {
  const setting = { level, measuring: measuringOf(units, level) };
  const seedOf = (name: readonly (string | number)[], redraws: number): string =>
    [seed, versionLetters(version), ...name, level, units, ...(redraws > 0 ? [redraws] : [])].join("/");
  if (set.kind === "course") return [(redraws) => drawCourse(seedOf(["course"], redraws), setting).flat()];
  return Array.from({ length: set.problems }, (_, index): Draw => {
    const topic = set.topics[index % set.topics.length] as TopicId;
    return (redraws) => [drawProblem(topic, seedOf([index + 1, topic], redraws), setting)];
  });
};

/** A version's problems in order. */
export const problemsOf = ({ version, ...options }: VersionOptions): Problem[] => {
  const key = JSON.stringify(options);
  if (latest?.key !== key)
    latest = { key, drawn: [], rest: distinctVersions((each) => drawsOf({ ...options, version: each })) };
  const { drawn, rest } = latest;
  while (drawn.length <= version) {
    const problems = rest.next().value;
    drawn.push(options.set.kind === "course" ? carryAnswers(problems) : problems);
  }
  return drawn[version] as Problem[];
};
