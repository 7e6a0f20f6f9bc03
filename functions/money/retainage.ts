import { fraction, money } from "../../shared/kinds/number";
import { productToCent } from "../../shared/money";
import { MONEY_RESULT } from "../../shared/result";
import { defineFunction, required } from "../../shared/spec/spec";
import { CREDIT_OR_CHARGE } from "./amounts";

/** What is held back of an amount until the work is accepted. */
export const retainage = (amount: number, rate: number): number => productToCent(amount, rate);

export const retainageSpec = defineFunction({
  id: "RETAINAGE",
  concept: "money",
  summary:
    "What is held back of an amount until the work is accepted. The contract and the law set the rate.",
  parameters: [
    required("amount", money(CREDIT_OR_CHARGE), "Work billed."),
    required("rate", fraction(), "Share held back, as 0.1 or 10%."),
  ],
  heading: "Retainage",
  result: MONEY_RESULT,
  formula: "amount × rate, to the cent, half a cent away from zero",
  source: "FAR 32.103 holds back at most 10 % of a federal construction contract's payment; states differ",
  examples: [
    { args: [12500, "10%"], result: 1250, from: "a tenth" },
    { args: [999.95, 0.05], result: 50, from: "49.9975" },
  ],
  calculate: retainage,
});
