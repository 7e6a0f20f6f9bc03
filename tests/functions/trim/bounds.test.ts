import fc from "fast-check";
import { Budget } from "../../../functions/trim/cutting/budget";
import { lowerBound } from "../../../functions/trim/cutting/lowerBound";
import { pack } from "../../../functions/trim/cutting/pack";
import { solveRelaxation } from "../../../functions/trim/cutting/columnGeneration";
import type { PackingProblem } from "../../../functions/trim/cutting/packingProblem";
import { packingProblemOf } from "../../../functions/trim/cutting/packingProblemOf";
import {
  roundingFunction,
  countingFunction,
  thresholdFunction,
  type DualFeasibleFunction,
} from "../../../functions/trim/cutting/dualFeasibleFunctions";
import { dualBound } from "../../../functions/trim/cutting/dualBound";
import { bestFilling } from "../../../functions/trim/cutting/bestFilling";
import { randomFrom, wholeBetween } from "../../support/random";
import { everyPacking } from "../../support/everyPacking";

const CAPACITY = 60;
const ENOUGH = 1e7;

const problemFrom = (sizes: readonly number[]): PackingProblem =>
  packingProblemOf(sizes, (size) => size, [{ capacity: CAPACITY, cost: 1, limit: Infinity }]).problem;

const sizes = fc.array(fc.integer({ min: 3, max: CAPACITY }), { minLength: 1, maxLength: 8 });

const dualFeasibleFunctions: [string, DualFeasibleFunction][] = [
  ...Array.from({ length: 20 }, (_, k): [string, DualFeasibleFunction] => [
    `rounding with k = ${k + 1}`,
    roundingFunction(CAPACITY, k + 1),
  ]),
  ...Array.from({ length: CAPACITY / 2 }, (_, k): [string, DualFeasibleFunction] => [
    `counting pieces of ${k + 1}`,
    countingFunction(CAPACITY, k + 1),
  ]),
  ...Array.from({ length: CAPACITY / 2 }, (_, k): [string, DualFeasibleFunction] => [
    `threshold ${k + 1}`,
    thresholdFunction(CAPACITY, k + 1),
  ]),
];

describe("lower bounds on a plan", () => {
  it.each(dualFeasibleFunctions)("the dual feasible function %s is superadditive", (_, dff) => {
    for (let one = 1; one < CAPACITY; one++)
      for (let other = 1; one + other <= CAPACITY; other++)
        expect(dff(one) + dff(other)).toBeLessThanOrEqual(dff(one + other));
  });

  it("are never above the best of all packings, whatever the duals", () => {
    const duals = fc.array(fc.double({ min: -1, max: 3, noNaN: true }), { minLength: 8, maxLength: 8 });
    fc.assert(
      fc.property(sizes, duals, (pieces, any) => {
        const problem = problemFrom(pieces);
        const { stocks } = everyPacking(pieces, CAPACITY);
        expect(lowerBound(problem)).toBeLessThanOrEqual(stocks);
        const some = any.slice(0, problem.sizes.length);
        expect(dualBound(problem, some, new Budget(ENOUGH))).toBeLessThanOrEqual(stocks);
        const relaxed = solveRelaxation(problem, [], false, new Budget(ENOUGH));
        expect(dualBound(problem, relaxed?.duals ?? [], new Budget(ENOUGH))).toBeLessThanOrEqual(stocks);
      }),
    );
  });

  it("the best filling has the value found by trying every choice of pieces", () => {
    const valued = fc.array(
      fc.tuple(fc.integer({ min: 3, max: CAPACITY }), fc.integer({ min: 1, max: 99 })),
      {
        minLength: 1,
        maxLength: 9,
      },
    );
    fc.assert(
      fc.property(valued, (pieces) => {
        const different = [...new Map(pieces)].sort(([a], [b]) => b - a);
        const problem = problemFrom(different.map(([size]) => size));
        const values = different.map(([, value]) => value);
        const unit = (different[0]?.[0] ?? 1) / (problem.sizes[0] ?? 1);
        let best = 0;
        for (let choice = 0; choice < 2 ** different.length; choice++) {
          const chosen = different.filter((_, index) => choice & (2 ** index));
          const size = chosen.reduce((sum, [each]) => sum + each, 0);
          if (size <= CAPACITY)
            best = Math.max(
              best,
              chosen.reduce((sum, [, value]) => sum + value, 0),
            );
        }
        const found = bestFilling(problem, values, CAPACITY / unit, 0, new Budget(ENOUGH));
        expect(found).toMatchObject({ value: best });
      }),
    );
  });
});

describe("a search that runs out of steps", () => {
  it("still gives a plan, and a bound no higher than the best cost", () => {
    const random = randomFrom(7);
    const pieces = Array.from({ length: 60 }, () => wholeBetween(random, 7, 29));
    const problem = problemFrom(pieces);
    const whole = pack(problem, new Budget(ENOUGH));
    expect(whole?.cost).toBe(whole?.bound);
    for (const steps of [0, 1, 10, 100, 1000, 10_000]) {
      const part = pack(problem, new Budget(steps));
      expect(part?.cost).toBeGreaterThanOrEqual(whole?.cost ?? NaN);
      expect(part?.bound).toBeLessThanOrEqual(whole?.cost ?? NaN);
      const held = part?.bins.flatMap(({ items }) => items.map((item) => problem.sizes[item])) ?? [];
      expect(held.sort()).toEqual(
        problem.sizes.flatMap((size, i) => Array.from({ length: problem.counts[i] ?? 0 }, () => size)).sort(),
      );
    }
  });
});
