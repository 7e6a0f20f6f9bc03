import { lengthInInches } from "../../shared/kinds/length";
import { lengthsInFeet } from "../../shared/kinds/lengths";
import { FEET_RESULT } from "../../shared/result";
import { defineFunction, optional, required } from "../../shared/spec/spec";
import { inchesToFeet } from "../../shared/units";
import { piecesForRun } from "./cutting/piecesForRun";

/** Feet of trim that a run uses: its length plus a lap at every joint. */
const feetOfRun = (lengthFt: number, lapIn: number, stockIn: number): number => {
  const joints = Math.max(0, piecesForRun(lengthFt, stockIn, lapIn) - 1);
  return lengthFt + joints * inchesToFeet(lapIn);
};

/** Lineal feet of trim for several runs, laps included. */
export const trimFeet = (lengthsFt: readonly number[], lapIn: number, stockIn: number): number =>
  lengthsFt.reduce((sum, lengthFt) => sum + feetOfRun(lengthFt, lapIn, stockIn), 0);

export const trimFeetSpec = defineFunction({
  id: "TRIMFEET",
  concept: "trim",
  summary: "Lineal feet of trim for all the runs in a range, with a lap at every joint.",
  parameters: [
    required(
      "lengthsFt",
      lengthsInFeet,
      "The runs, one per cell: lengths of eave, gable edge, ridge, hip or valley.",
    ),
    optional("lapIn", lengthInInches(), "Overlap where two pieces meet.", 0),
    optional("stockIn", lengthInInches({ moreThan: 0 }), "Length of one piece as sold.", 120),
  ],
  heading: "Trim (ft)",
  result: FEET_RESULT,
  formula: "Σ (length + joints × lap), joints = pieces − 1",
  source: "common practice, no published source",
  examples: [
    { args: [[[40], [12.5]]], result: 52.5, from: "40 + 12.5, no lap" },
    { args: [[[40]], 3], result: 41, from: "five pieces of 120 in: four joints of 3 in" },
  ],
  calculate: trimFeet,
});
