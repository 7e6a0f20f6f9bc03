import { fraction, money } from "../../shared/kinds/number";
import { exact, toNearestCent } from "../../shared/money";
import { MONEY_RESULT } from "../../shared/result";
import { defineFunction, required } from "../../shared/spec/spec";
import { CREDIT_OR_CHARGE } from "./amounts";

/** A higher rate is a percentage typed as a whole number. */
const HIGHEST_RATE = 10;

/** The cost plus a share of the cost, to the cent. */
export const markup = (cost: number, rate: number): number =>
  toNearestCent(cost * (1 + rate), () => exact(cost).times(exact(rate).plus(1)));

export const markupSpec = defineFunction({
  id: "MARKUP",
  concept: "money",
  summary: "The price that adds a share of the cost, the markup, to the cost.",
  parameters: [
    required("cost", money(CREDIT_OR_CHARGE), "Cost; a credit is negative."),
    required(
      "rate",
      fraction({ atLeast: 0, atMost: HIGHEST_RATE }),
      "Markup as a share of the cost, such as 0.5 or 50%.",
    ),
  ],
  heading: "Price with markup",
  result: MONEY_RESULT,
  formula: "cost × (1 + rate), rounded to the cent, half cents away from zero",
  source: "arithmetic, in exact decimals",
  examples: [
    { args: [40, "50%"], result: 60, from: "40 + 20; the margin is 33.33%" },
    {
      args: [1.05, 0.1],
      result: 1.16,
      from: "1.155: half a cent rounds up, where binary fractions give 1.15",
    },
  ],
  calculate: markup,
});
