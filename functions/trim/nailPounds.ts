import { quantity } from "../../shared/kinds/number";
import { POUNDS_RESULT } from "../../shared/result";
import { defineFunction, required } from "../../shared/spec/spec";

/** Pounds of nails for a count. Not rounded: PACKS does that. */
export const nailPounds = (count: number, perPound: number): number => count / perPound;

export const nailPoundsSpec = defineFunction({
  id: "NAILPOUNDS",
  concept: "trim",
  summary: "Pounds of nails for a number of nails.",
  parameters: [
    required("count", quantity("nails"), "Nails needed."),
    required("perPound", quantity("nails", { moreThan: 0 }), "Nails per pound, from the box."),
  ],
  heading: "Nails (lb)",
  result: POUNDS_RESULT,
  formula: "count ÷ nails per pound",
  source: "arithmetic; nails per pound differ by manufacturer",
  examples: [
    {
      args: [940, 94],
      result: 10,
      from: "8d common nails, 94 to the pound in a table of nails of about 1900",
    },
  ],
  calculate: nailPounds,
});
