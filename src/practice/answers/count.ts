import { wholeCount } from "../../../shared/rounding";
import { withShown } from "../commonMistakes";
import type { Answer, Mistake } from "../topic";

export const distanceToWhole = (quantity: number): number => Math.abs(quantity - Math.round(quantity));

/** A count. A mistake that gives the right count isn't listed. */
export const wholeAnswer = (
  label: string,
  things: string,
  count: number,
  mistakes: readonly Mistake[],
): Answer => ({
  field: { label, kind: "count", unit: things, format: "a whole number" },
  value: count,
  shown: String(count),
  tolerance: 0,
  why: "none: counts round up to whole numbers",
  mistakes: withShown(
    mistakes.filter(({ value }) => value !== count),
    String,
  ),
});

/**
 * A quantity rounded up. `fromRounded` is the quantity found with rounded intermediate results: the answer is clear of
 * rounding only if it gives the same count.
 */
export const countAnswer = (
  label: string,
  things: string,
  quantity: number,
  mistakes: readonly Mistake[],
  fromRounded = quantity,
): Answer => ({
  ...wholeAnswer(label, things, wholeCount(quantity), [
    ...mistakes,
    { name: "rounded down", value: Math.floor(quantity) },
  ]),
  roundingMargin: wholeCount(fromRounded) === wholeCount(quantity) ? distanceToWhole(quantity) : 0,
});
