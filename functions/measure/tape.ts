import { numberChoice } from "../../shared/kinds/choice";
import { lengthInFeet } from "../../shared/kinds/length";
import { writeTape } from "../../shared/lengthText";
import { TEXT_RESULT } from "../../shared/result";
import { defineFunction, optional, required } from "../../shared/spec/spec";

/** Fractions of an inch that tape measures are marked in. */
const TAPE_MARKS = [1, 2, 4, 8, 16, 32, 64];

export const tapeSpec = defineFunction({
  id: "TAPE",
  concept: "measure",
  summary: "A length in feet, inches and a fraction, as read on a tape.",
  parameters: [
    required("lengthFt", lengthInFeet(), "Feet, or text with its unit."),
    optional(
      "denominator",
      numberChoice(TAPE_MARKS),
      "Marks per inch; the length is rounded to the nearest mark.",
      16,
    ),
  ],
  heading: "Tape",
  result: TEXT_RESULT,
  formula: "feet × 12 × denominator, rounded to the nearest whole mark",
  source: "common practice, no published source",
  examples: [
    { args: [18.5416667], result: `18' 6 1/2"`, from: "0.5416667 ft × 12 = 6.5 in" },
    { args: [11.999], result: `12' 0"`, from: "143.988 in is nearest 144 in by sixteenths" },
    { args: ["1 m", 32], result: `3' 3 3/8"`, from: "39.3701 in; 0.3701 × 32 = 11.84, nearest 12/32 = 3/8" },
  ],
  calculate: writeTape,
});
