import { countOf } from "../../shared/result";
import { defineFunction } from "../../shared/spec/spec";
import { cutPlan } from "./cutting/cutPlan";
import { STOCK_PARAMETERS } from "./cutting/stockParameters";
import { trimJob } from "./cutting/trimJob";

export const trimStockSpec = defineFunction({
  id: "TRIMSTOCK",
  concept: "trim",
  summary: "The fewest stock lengths of trim to buy for all the runs in a range.",
  parameters: STOCK_PARAMETERS,
  heading: "Trim stock lengths",
  result: countOf("stock lengths"),
  formula:
    "each run takes the fewest pieces: whole stock lengths and a remainder; the remainders, each with its kerf, are packed " +
    "into the fewest stock lengths, or the cheapest if there are prices; TRIMCUTS shows whether that is proved",
  source: "common practice, no published source; the one-dimensional cutting-stock problem",
  examples: [
    { args: [[[10], [10], [10]], 120], result: 3, from: "three whole lengths" },
    {
      args: [[[14], [6], [4], [6]], 120, 0],
      result: 3,
      from: "10, 4 + 6, 4 + 6: 30 ft can't come from fewer than three lengths of 10 ft",
    },
    { args: [[[5], [5]], 120, 0, `1/8"`], result: 2, from: "the saw takes 1/8 in from the second half" },
    {
      args: [[[12]], [[120], [144]], 0, 0, 0, [[10], [11]]],
      result: 1,
      from: "one piece of 144 in",
    },
  ],
  calculate: (...values) => cutPlan(trimJob(...values)).stocks.length,
});
