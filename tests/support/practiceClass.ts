import type { Level } from "../../functions/practice/level";
import type { Units } from "../../functions/practice/measuring";
import { problemsOf } from "../../src/practice/class/practiceClass";
import type { Problem } from "../../src/practice/problems/problem";
import { TOPIC_IDS } from "../../src/practice/topics/index";

export const ALL_TOPICS = { kind: "topics", topics: TOPIC_IDS, problems: TOPIC_IDS.length } as const;

/** A class's first version, with a problem of each topic. */
export const classOf = (seed: number, level: Level, units: Units): Problem[] =>
  problemsOf({ seed: String(seed), version: 0, level, units, set: ALL_TOPICS });
