import { fraction, quantity } from "../../shared/kinds/number";
import { countOf } from "../../shared/result";
import { wholeCount } from "../../shared/rounding";
import { defineFunction, optional, required } from "../../shared/spec/spec";

/** Whole packs that hold a quantity plus an allowance for waste. */
export const packs = (needed: number, perPack: number, waste: number): number =>
  wholeCount((needed * (1 + waste)) / perPack);

export const packsSpec = defineFunction({
  id: "PACKS",
  concept: "orders",
  summary: "Whole packs to order for a quantity.",
  parameters: [
    required("quantity", quantity(""), "Quantity needed, in any unit."),
    required("perPack", quantity("", { moreThan: 0 }), "Quantity in one pack, in the same unit."),
    optional("waste", fraction(), "Allowance for waste, such as 0.1 or 10%.", 0),
  ],
  heading: "Packs",
  result: countOf("packs"),
  formula: "quantity × (1 + waste) ÷ per pack, rounded up",
  source: "Navy NAVEDTRA 14044 (Builder 3&2 vol. 2): 42 1/3 squares in bundles of 1/3 square",
  examples: [
    { args: ["42 1/3", "1/3"], result: 127, from: "three bundles to the square: 127 bundles exactly" },
    { args: [101, 25], result: 5, from: "four packs hold 100" },
    { args: [100, 10, "10%"], result: 11, from: "110 in packs of 10" },
  ],
  calculate: packs,
});
