import type { Cell } from "../../shared/cell";
import { countOf, INCHES_RESULT, TEXT_RESULT, VALUE_RESULT } from "../../shared/result";
import { defineTable } from "../../shared/spec/spec";
import { inchesToFeet } from "../../shared/units";
import { cutPlan, type PlannedStock } from "./cutting/cutPlan";
import { exactTape } from "./cutting/exactTape";
import { STOCK_PARAMETERS } from "./cutting/stockParameters";
import { trimJob, type TrimJob } from "./cutting/trimJob";

const piecesText = ({ pieces }: PlannedStock): string =>
  pieces.map(({ run, lengthIn }) => `${exactTape(inchesToFeet(lengthIn))} run ${run}`).join(", ");

/** Finer than any price or length; below it is floating-point error. */
const SUM_UNITS = 1e6;
const sumOf = (values: readonly number[]): number =>
  Math.round(values.reduce((sum, value) => sum + value, 0) * SUM_UNITS) / SUM_UNITS;

/** One row per stock length, then the totals and what is proved. */
const cutRows = (job: TrimJob): Cell[][] => {
  const plan = cutPlan(job);
  const stocks = plan.stocks.map((planned) => {
    const { lengthIn = 0, price } = job.stocks[planned.stock] ?? {};
    return { planned, lengthIn, price };
  });
  const prices = stocks.flatMap(({ price }) => price ?? []);
  const isPriced = job.stocks.some(({ price }) => price !== undefined);
  return [
    ...stocks.map(({ planned, lengthIn, price }, index) => [
      index + 1,
      lengthIn,
      piecesText(planned),
      planned.leftOverIn,
      ...(price === undefined ? [] : [price]),
    ]),
    [
      "total",
      sumOf(stocks.map(({ lengthIn }) => lengthIn)),
      plan.verdict,
      sumOf(plan.stocks.map(({ leftOverIn }) => leftOverIn)),
      ...(isPriced ? [sumOf(prices)] : []),
    ],
  ];
};

export const trimCutsSpec = defineTable({
  id: "TRIMCUTS",
  concept: "trim",
  summary: "What to cut from each stock length of trim, what is left over, and whether fewer could do.",
  parameters: STOCK_PARAMETERS,
  columns: [
    { heading: "stock", result: countOf("stock") },
    { heading: "length (in)", result: INCHES_RESULT },
    { heading: "pieces", result: TEXT_RESULT },
    { heading: "left-over (in)", result: INCHES_RESULT },
    { heading: "price", result: VALUE_RESULT },
  ],
  formula:
    "as TRIMSTOCK; among equal plans, the one with the longest single left-over; a piece that is too short takes the " +
    "difference from the whole length next to it",
  source: "common practice, no published source; the one-dimensional cutting-stock problem",
  examples: [
    {
      args: [[[14], [6], [4], [6]], 120, 0],
      result: [
        ["stock", "length (in)", "pieces", "left-over (in)"],
        [1, 120, `10' 0" run 1`, 0],
        [2, 120, `6' 0" run 2, 4' 0" run 1`, 0],
        [3, 120, `6' 0" run 4, 4' 0" run 3`, 0],
        ["total", 360, "proved fewest", 0],
      ],
      from: "run 1 is 10 ft and 4 ft; 30 ft in all are three lengths of 10 ft",
    },
    {
      args: [[[14]], [[120], [144]], 2, 0, 0, [[10], [13]]],
      result: [
        ["stock", "length (in)", "pieces", "left-over (in)", "price"],
        [1, 120, `10' 0" run 1`, 0, 10],
        [2, 120, `4' 2" run 1`, 70, 10],
        ["total", 240, "proved cheapest", 70, 20],
      ],
      from: "168 + 2 in of two pieces: any two lengths do, two of the cheaper cost 20",
    },
  ],
  calculate: (...values) => cutRows(trimJob(...values)),
});
