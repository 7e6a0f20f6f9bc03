import type { Measuring } from "../../../functions/practice/measuring";
import { MM_PER_INCH } from "../../../shared/units";
import { withShown } from "../commonMistakes";
import type { Answer, Mistake } from "../topic";

/** A tolerance and the reason for it. */
export type Allowance = Pick<Answer, "tolerance" | "why">;

const TAPE_TOLERANCE_IN = 1 / 8;
const TAPE_TOLERANCE_MM = 3;

export const tapeToleranceIn = ({ units }: Measuring): number =>
  units === "metric" ? TAPE_TOLERANCE_MM / MM_PER_INCH : TAPE_TOLERANCE_IN;

const tapeAllowance = (measuring: Measuring): Allowance => ({
  tolerance: tapeToleranceIn(measuring),
  why: `${measuring.writeSmall(tapeToleranceIn(measuring))}: careful work with a tape`,
});

type LengthAnswer = (
  label: string,
  valueIn: number,
  measuring: Measuring,
  mistakes: readonly Mistake[],
  allowance?: Allowance,
) => Answer;

const lengthIn =
  (imperial: Pick<Answer["field"], "unit" | "format">, writer: "write" | "writeSmall"): LengthAnswer =>
  (label, valueIn, measuring, mistakes, allowance = tapeAllowance(measuring)) => ({
    field: {
      label,
      kind: "length",
      ...(measuring.units === "metric" ? { unit: "mm", format: "whole millimeters" } : imperial),
    },
    value: valueIn,
    shown: measuring[writer](valueIn),
    ...allowance,
    mistakes: withShown(mistakes, measuring[writer]),
  });

/** A length up a slope or along a roof, in feet and inches or in mm. */
export const lengthAnswer = lengthIn({ unit: "ft", format: "feet, inches and sixteenths" }, "write");

/** A length of panel or trim, in inches or in mm. */
export const smallLengthAnswer = lengthIn({ unit: "in", format: "inches and a fraction" }, "writeSmall");
