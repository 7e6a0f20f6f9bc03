import { fraction, money } from "../../shared/kinds/number";
import { exact, toNearestCent } from "../../shared/money";
import { MONEY_RESULT } from "../../shared/result";
import { defineFunction, required } from "../../shared/spec/spec";
import { CREDIT_OR_CHARGE } from "./amounts";

/** More than this is a percentage that was typed as a number. */
const HIGHEST_RATE = 10;

/** The price with a share of the cost on top. */
export const markup = (cost: number, rate: number): number =>
  toNearestCent(cost * (1 + rate), () => exact(cost).times(exact(rate).plus(1)));

export const markupSpec = defineFunction({
  id: "MARKUP",
  concept: "money",
  summary: "The price at which a share of the cost, the markup, is put on top of the cost.",
  parameters: [
    required("cost", money(CREDIT_OR_CHARGE), "What it costs."),
    required("rate", fraction({ atLeast: 0, atMost: HIGHEST_RATE }), "Share of the cost, as 0.5 or 50%."),
  ],
  heading: "Price with markup",
  result: MONEY_RESULT,
  formula: "cost × (1 + rate), to the cent, half a cent away from zero",
  source: "arithmetic, in exact decimals",
  examples: [
    { args: [40, "50%"], result: 60, from: "40 + 20; the margin is 33.33 %" },
    { args: [1.05, 0.1], result: 1.16, from: "1.155: half a cent goes up, where binary fractions give 1.15" },
  ],
  calculate: markup,
});
