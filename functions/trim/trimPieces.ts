import { lengthInFeet, lengthInInches } from "../../shared/kinds/length";
import { countOf } from "../../shared/result";
import { defineFunction, optional, required } from "../../shared/spec/spec";
import { piecesForRun } from "./cutting/piecesForRun";

export const trimPiecesSpec = defineFunction({
  id: "TRIMPIECES",
  concept: "trim",
  summary: "Pieces of trim stock for one run, each lapped over the last.",
  parameters: [
    required("lengthFt", lengthInFeet(), "Length of the run: an eave, gable edge, ridge, hip or valley."),
    required("stockIn", lengthInInches({ moreThan: 0 }), "Length of one piece as sold."),
    optional("lapIn", lengthInInches(), "Overlap where two pieces meet.", 0),
  ],
  heading: "Trim pieces",
  result: countOf("pieces"),
  formula: "(length − lap) ÷ (stock − lap), rounded up; 0 for no length",
  source: "common practice, no published source",
  examples: [
    { args: [40, 120], result: 4, from: "480 in ÷ 120 in, no lap" },
    { args: [40, 120, 2], result: 5, from: "four pieces reach only 4 × 120 − 3 × 2 = 474 in" },
    { args: [`39' 6"`, 120, 2], result: 4, from: "474 in is exactly four pieces less three laps" },
  ],
  calculate: piecesForRun,
});
