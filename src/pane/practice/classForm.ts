import type { Level } from "../../../functions/practice/level";
import type { Units } from "../../../functions/practice/measuring";
import type { ClassOptions } from "../../practice/practiceClass";
import { TOPICS } from "../../practice/topics/index";

/** What stands in the card's fields. */
export interface ClassForm {
  readonly set: "topics" | "course";
  readonly level: Level;
  readonly units: Units;
  readonly topics: readonly string[];
  readonly problems: string;
  readonly versions: string;
  readonly seed: string;
}

/** Four digits: short enough to be written on a board. */
export const newSeed = (): string => String(1000 + Math.floor(Math.random() * 9000));

export const firstForm = (): ClassForm => ({
  set: "topics",
  level: "half day",
  units: "feet and inches",
  topics: TOPICS.map(({ id }) => id),
  problems: "12",
  versions: "2",
  seed: newSeed(),
});

/** A field that holds no number is none, and the class's check says so. */
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
