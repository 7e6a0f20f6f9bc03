import { fraction, money } from "../../shared/kinds/number";
import { exact, toNearestCent } from "../../shared/money";
import { MONEY_RESULT } from "../../shared/result";
import { defineFunction, required } from "../../shared/spec/spec";
import { CREDIT_OR_CHARGE } from "./amounts";

/** The price that leaves a margin, which is a share of the price; a markup is a share of the cost. To the cent. */
export const sellPrice = (cost: number, margin: number): number => {
  // Near 1, one minus a binary fraction loses digits.
  const nearly = margin > 0.999 ? NaN : cost / (1 - margin);
  return toNearestCent(nearly, () => exact(cost).div(exact(1).minus(exact(margin))));
};

export const sellPriceSpec = defineFunction({
  id: "SELLPRICE",
  concept: "money",
  summary: "The price that leaves a share of the price, the margin, over the cost.",
  parameters: [
    required("cost", money(CREDIT_OR_CHARGE), "Cost; a credit is negative."),
    required(
      "margin",
      fraction({ atLeast: 0, lessThan: 1 }),
      "Margin as a share of the price, such as 0.25 or 25%.",
    ),
  ],
  heading: "Sell price",
  result: MONEY_RESULT,
  formula: "cost ÷ (1 − margin), rounded to the cent, half cents away from zero",
  source: "arithmetic, in exact decimals",
  examples: [
    { args: [75, "25%"], result: 100, from: "a price of 100 leaves 25 over the cost of 75" },
    { args: [40, "1/3"], result: 60, from: "a markup of 50% on 40 is a margin of one third of 60" },
    { args: [10, 0.3], result: 14.29, from: "10 ÷ 0.7 is 14.2857" },
  ],
  calculate: sellPrice,
});
