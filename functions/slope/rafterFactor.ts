import { pitch } from "../../shared/kinds/pitch";
import { RATIO_RESULT } from "../../shared/result";
import { defineFunction, required } from "../../shared/spec/spec";
import { PITCH_RUN } from "../../shared/units";

/** Sloped length per level length, and sloped area per plan area: sqrt(1 + (rise/12)²). Not rounded. (`Math.hypot` may be off by the last digit.) */
export const rafterFactor = (rise: number): number => Math.sqrt(1 + (rise / PITCH_RUN) ** 2);

export const rafterFactorSpec = defineFunction({
  id: "RAFTERFACTOR",
  concept: "slope",
  summary: "Sloped length per unit of level run; also sloped area per unit of plan area.",
  parameters: [required("pitch", pitch(), "Rise on 12.")],
  heading: "Rafter factor",
  result: RATIO_RESULT,
  formula: "√(1 + (rise ÷ 12)²)",
  source: "Framing-square practice; US Army Engineer School Subcourse EN0069 Ed. A, Lesson 2",
  examples: [
    { args: ["6:12"], result: Math.sqrt(1.25), from: "√(1 + 0.5²) = 1.118034" },
    { args: [5], result: 13 / 12, from: "the 5-12-13 triangle" },
    { args: [16], result: 20 / 12, from: "20.00 in per foot of run, EN0069 Lesson 2" },
  ],
  calculate: rafterFactor,
});
