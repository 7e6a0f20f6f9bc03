import { fraction, money } from "../../shared/kinds/number";
import { productToCent } from "../../shared/money";
import { MONEY_RESULT } from "../../shared/result";
import { defineFunction, required } from "../../shared/spec/spec";
import { CREDIT_OR_CHARGE } from "./amounts";

/** Sales tax on an amount or a credit, to the cent. */
export const salesTax = (amount: number, rate: number): number => productToCent(amount, rate);

export const salesTaxSpec = defineFunction({
  id: "SALESTAX",
  concept: "money",
  summary: "Sales tax on an amount, to the cent. State law sets the rate and which lines are taxable.",
  parameters: [
    required("amount", money(CREDIT_OR_CHARGE), "Taxable amount; a credit is negative."),
    required("rate", fraction(), "State and local rates added together, such as 0.0725 or 7.25%."),
  ],
  heading: "Sales tax",
  result: MONEY_RESULT,
  formula: "amount × rate, rounded once to the cent, half cents away from zero",
  source:
    "Streamlined Sales and Use Tax Agreement, section 324, as in R.I. Gen. Laws 44-18.1-25: tax is carried to the third " +
    "decimal and rounded up where that is more than 4",
  examples: [
    { args: [17.11, "4%"], result: 0.68, from: "0.6844: the third decimal is 4" },
    { args: [20.58, "6%"], result: 1.23, from: "1.2348: published rule, 1.234 is 1.23" },
    { args: [24.7, "5%"], result: 1.24, from: "1.235: published rule, 1.235 is 1.24" },
    { args: [-24.7, "5%"], result: -1.24, from: "the credit returns exactly what was charged" },
  ],
  calculate: salesTax,
});
