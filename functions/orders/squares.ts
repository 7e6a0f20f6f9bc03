import { fraction, quantity } from "../../shared/kinds/number";
import { SQUARES_RESULT } from "../../shared/result";
import { defineFunction, optional, required } from "../../shared/spec/spec";
import { SQ_FT_PER_SQUARE } from "../../shared/units";

/** Squares of roofing for a sloped area, plus an allowance for waste. Not rounded. */
export const squares = (areaSqFt: number, waste: number): number =>
  (areaSqFt * (1 + waste)) / SQ_FT_PER_SQUARE;

export const squaresSpec = defineFunction({
  id: "SQUARES",
  concept: "orders",
  summary: "Squares of roofing, 100 sq ft each, with an allowance for waste.",
  parameters: [
    required("areaSqFt", quantity("sq ft"), "Sloped area."),
    optional("waste", fraction(), "Allowance for waste, such as 0.1 or 10%.", 0),
  ],
  heading: "Squares",
  result: SQUARES_RESULT,
  formula: "area × (1 + waste) ÷ 100",
  source: "definition of a square: US Army EN5156 Part C",
  examples: [
    { args: [1600], result: 16, from: "1600 ÷ 100" },
    { args: [1600, "10%"], result: 17.6, from: "1600 × 1.1 ÷ 100" },
  ],
  calculate: squares,
});
