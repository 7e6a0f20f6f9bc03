import type { Answer } from "../topic";

/** One of several choices; `roundingMargin` is how far the quantity is from the limit between them, as a fraction of the limit. */
export const choiceAnswer = (
  label: string,
  choices: readonly string[],
  value: string,
  roundingMargin: number,
): Answer => ({
  field: { label, kind: "word", unit: "", format: choices.join(" or "), choices },
  value,
  shown: value,
  tolerance: 0,
  why: "none: one of the choices",
  mistakes: [],
  roundingMargin,
});
