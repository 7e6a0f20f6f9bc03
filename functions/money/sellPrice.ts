import { fraction, money } from "../../shared/kinds/number";
import { exact, toNearestCent } from "../../shared/money";
import { MONEY_RESULT } from "../../shared/result";
import { defineFunction, required } from "../../shared/spec/spec";
import { CREDIT_OR_CHARGE } from "./amounts";

/** The price of which the margin is a share: not the same as a markup, which is a share of the cost. */
export const sellPrice = (cost: number, margin: number): number => {
  // Near 1, what a binary fraction lacks to 1 loses its digits.
  const nearly = margin > 0.999 ? NaN : cost / (1 - margin);
  return toNearestCent(nearly, () => exact(cost).div(exact(1).minus(exact(margin))));
};

export const sellPriceSpec = defineFunction({
  id: "SELLPRICE",
  concept: "money",
  summary: "The price at which a share of the price itself, the margin, is left over the cost.",
  parameters: [
    required("cost", money(CREDIT_OR_CHARGE), "What it costs."),
    required("margin", fraction({ atLeast: 0, lessThan: 1 }), "Share of the price, as 0.25 or 25%."),
  ],
  heading: "Sell price",
  result: MONEY_RESULT,
  formula: "cost ÷ (1 − margin), to the cent, half a cent away from zero",
  source: "arithmetic, in exact decimals",
  examples: [
    { args: [75, "25%"], result: 100, from: "25 of 100 is left over 75" },
    { args: [40, "1/3"], result: 60, from: "a markup of 50 % on 40 is a margin of a third of 60" },
    { args: [10, 0.3], result: 14.29, from: "10 ÷ 0.7 is 14.2857" },
  ],
  calculate: sellPrice,
});
