import type { Level } from "../../functions/practice/level";
import type { Measuring } from "../../functions/practice/measuring";
import type { Random } from "../../functions/practice/random";
import type { Figure } from "../pictures/figure";

/** What all problems of a class share. */
export interface Setting {
  readonly level: Level;
  readonly measuring: Measuring;
}

/** A measurement or price that the student is given. */
export interface Given {
  readonly label: string;
  readonly text: string;
}

/** How an answer is read: lengths in inches, a pitch as its rise in 12, areas in sq ft. */
export type AnswerKind = "length" | "pitch" | "degrees" | "number" | "count" | "area" | "money" | "word";

/** One answer to find, without its value. */
export interface Field {
  readonly label: string;
  readonly kind: AnswerKind;
  /** The unit of a bare number. */
  readonly unit: string;
  /** How to write the answer, such as `whole millimeters`. */
  readonly format: string;
  /** The choices of an answer that is picked from a list. */
  readonly choices?: readonly string[];
}

/** A common mistake and the answer it gives. */
export interface Mistake {
  readonly name: string;
  readonly value: number;
}

export interface ShownMistake extends Mistake {
  /** What the student would write. */
  readonly shown: string;
}

export interface Answer {
  readonly field: Field;
  readonly value: number | string;
  /** As the answer key shows it. */
  readonly shown: string;
  /** How far off a right answer may be, in the unit of its kind. */
  readonly tolerance: number;
  /** The tolerance and the reason for it, as the answer key shows them. */
  readonly why: string;
  readonly mistakes: readonly ShownMistake[];
  /** How far the unrounded quantity is from the point where rounding changes, as a fraction of 1; undefined: nothing is rounded. */
  readonly roundingMargin?: number;
}

/** One step of the solution: text with this problem's numbers, and a formula with the same result. */
export interface Step {
  readonly text: string;
  readonly formula: string;
  readonly result: number | string;
}

/** Everything printed on a student's page. It has no answers, so no answer can get onto the page. */
export interface Question {
  readonly title: string;
  /** What is asked, in full sentences. */
  readonly text: string;
  readonly givens: readonly Given[];
  readonly fields: readonly Field[];
  readonly figure?: Figure;
}

export interface Solution {
  readonly answers: readonly Answer[];
  readonly steps: readonly Step[];
}

/** A problem's measurements by name: lengths in inches, pitches as rise in 12. */
export type Facts = Readonly<Record<string, number>>;

/** A kind of problem. The README in this folder says how to add one. */
export interface Topic<F extends Facts = Facts> {
  readonly id: string;
  /** The title of its pages, at most 28 letters: sheets are named after it. */
  readonly title: string;
  /** What to show the class when many got it wrong. */
  readonly reteachTip: string;
  draw(random: Random, setting: Setting): F;
  ask(facts: F, setting: Setting): Omit<Question, "title" | "fields">;
  solve(facts: F, setting: Setting): Solution;
}
