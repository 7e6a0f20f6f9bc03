import { fraction, money } from "../../shared/kinds/number";
import { productToCent } from "../../shared/money";
import { MONEY_RESULT } from "../../shared/result";
import { defineFunction, required } from "../../shared/spec/spec";
import { CREDIT_OR_CHARGE } from "./amounts";

/** The part of an amount that is held back until the work is accepted, to the cent. */
export const retainage = (amount: number, rate: number): number => productToCent(amount, rate);

export const retainageSpec = defineFunction({
  id: "RETAINAGE",
  concept: "money",
  summary:
    "The part of an amount held back until the work is accepted. The contract and the law set the rate.",
  parameters: [
    required("amount", money(CREDIT_OR_CHARGE), "Amount billed."),
    required("rate", fraction(), "Share held back, such as 0.1 or 10%."),
  ],
  heading: "Retainage",
  result: MONEY_RESULT,
  formula: "amount × rate, rounded to the cent, half cents away from zero",
  source: "FAR 32.103: at most 10% of a payment under a federal construction contract; state laws differ",
  examples: [
    { args: [12500, "10%"], result: 1250, from: "a tenth" },
    { args: [999.95, 0.05], result: 50, from: "49.9975" },
  ],
  calculate: retainage,
});
