import type { Level } from "../../../functions/practice/level";
import type { Units } from "../../../functions/practice/measuring";
import type { ClassOptions } from "../../practice/class/classOptions";
import { TOPIC_IDS, type TopicId } from "../../practice/topics/index";

/** The values in the Class card's fields. */
export interface ClassForm {
  readonly set: "topics" | "course";
  readonly level: Level;
  readonly units: Units;
  readonly topics: readonly TopicId[];
  readonly problems: string;
  readonly versions: string;
  readonly seed: string;
}

/** Four digits: short enough to write on a board. */
export const newSeed = (): string => String(1000 + Math.floor(Math.random() * 9000));

export const firstForm = (): ClassForm => ({
  set: "topics",
  level: "half day",
  units: "feet and inches",
  topics: TOPIC_IDS,
  problems: String(TOPIC_IDS.length),
  versions: "2",
  seed: newSeed(),
});

/** NaN for an empty field, which the class's check reports. */
const countIn = (field: string): number => (field.trim() === "" ? NaN : Number(field));

export const classOptionsOf = ({
  set,
  level,
  units,
  topics,
  problems,
  versions,
  seed,
}: ClassForm): ClassOptions => ({
  seed: seed.trim(),
  level,
  units,
  set: set === "course" ? { kind: "course" } : { kind: "topics", topics, problems: countIn(problems) },
  versions: countIn(versions),
});
