import fc from "fast-check";
import { planWithin } from "../../../functions/trim/cutting/binCompletion";
import { Budget } from "../../../functions/trim/cutting/budget";
import { costOf, totalSize, type Stock } from "../../../functions/trim/cutting/packingProblem";
import { randomFrom, wholeBetween, type Random } from "../../support/random";
import { endless, expectPlan, leastSteps, PLENTY, problemFrom, SEEDS } from "../../support/cutting";

describe("bin completion: the search for a plan of at most a given cost", () => {
  /** The least cost, by trying every piece in every open stock and in a new one of each kind. Infinity where none fits. */
  const leastCost = (pieces: readonly number[], stocks: readonly Stock[]): number => {
    let best = Infinity;
    const place = (index: number, left: readonly number[], limits: readonly number[], cost: number): void => {
      const piece = pieces[index];
      if (cost >= best) return;
      if (piece === undefined) best = cost;
      else {
        left.forEach((each, bin) => {
          if (each >= piece) place(index + 1, left.with(bin, each - piece), limits, cost);
        });
        stocks.forEach((stock, kind) => {
          const limit = limits[kind] ?? 0;
          if (limit > 0 && stock.capacity >= piece)
            place(
              index + 1,
              [...left, stock.capacity - piece],
              limits.with(kind, limit - 1),
              cost + stock.cost,
            );
        });
      }
    };
    place(
      0,
      [],
      stocks.map(({ limit }) => limit),
      0,
    );
    return best;
  };

  const KINDS: readonly (readonly Stock[])[] = [
    [endless(24)],
    [endless(24, 5), endless(17, 3)],
    [endless(16, 3), endless(24, 5), endless(20, 4)],
    [{ capacity: 24, cost: 3, limit: 2 }, endless(20, 4)],
    [
      { capacity: 18, cost: 1, limit: 1 },
      { capacity: 24, cost: 2, limit: 2 },
      { capacity: 20, cost: 5, limit: 2 },
    ],
  ];

  it("finds a plan if there is one, and proves it if there is none", () => {
    const pieces = fc.array(fc.integer({ min: 4, max: 24 }), { minLength: 1, maxLength: 7 });
    fc.assert(
      fc.property(pieces, fc.constantFrom(...KINDS), (some, stocks) => {
        const problem = problemFrom(some, stocks);
        const least = leastCost(some, stocks);
        const most = Number.isFinite(least) ? least : 100;
        const found = planWithin(problem, most, new Budget(PLENTY));
        if (typeof found === "string") expect([found, least]).toEqual(["none", Infinity]);
        else {
          expectPlan(problem, found);
          expect(costOf(problem, found)).toBeLessThanOrEqual(least);
          expect(planWithin(problem, least - 1, new Budget(PLENTY))).toBe("none");
        }
      }),
      { numRuns: 1000 },
    );
  });

  const CAPACITY = 1000;
  /** Pieces that fill every stock in threes, so that there is a plan without slack. */
  const triples = (random: Random, count: number, capacity = CAPACITY): number[] =>
    Array.from({ length: count }, () => {
      const first = wholeBetween(random, 260, 480);
      const second = wholeBetween(random, 260, Math.min(480, capacity - first - 230));
      return [first, second, capacity - first - second];
    }).flat();

  it("backtracks until it finds the plan without slack", () => {
    for (const seed of SEEDS) {
      const problem = problemFrom(triples(randomFrom(seed), 8), [endless(CAPACITY)]);
      const found = planWithin(problem, 8, new Budget(PLENTY));
      if (typeof found === "string") throw new Error(`${found} for seed ${seed}`);
      expectPlan(problem, found);
      expect(found).toHaveLength(8);
    }
  });

  it("finds the plan without slack also with two stock lengths in exact supply", () => {
    for (const seed of SEEDS) {
      const random = randomFrom(seed);
      const pieces = [...triples(random, 3), ...triples(random, 3, 1100)];
      const stocks = [
        { capacity: 1100, cost: 11, limit: 3 },
        { capacity: CAPACITY, cost: 10, limit: 3 },
      ];
      const problem = problemFrom(pieces, stocks);
      const found = planWithin(problem, 63, new Budget(PLENTY));
      if (typeof found === "string") throw new Error(`${found} for seed ${seed}`);
      expectPlan(problem, found);
    }
  });

  it("is undecided with fewer steps than it needs, whether or not there is a plan", () => {
    const pieces = triples(randomFrom(3), 4);
    for (const most of [4, 5]) {
      const problem = problemFrom(most === 4 ? [...pieces, 230] : [...pieces, 230, 20], [endless(CAPACITY)]);
      const budget = new Budget(PLENTY);
      const outcome = planWithin(problem, most, budget);
      expect(outcome).not.toBe("undecided");
      const needed = leastSteps((steps) => planWithin(problem, most, new Budget(steps)) !== "undecided");
      expect(needed).toBe(PLENTY - budget.left);
      expect(planWithin(problem, most, new Budget(needed))).toEqual(outcome);
    }
  });

  const drawn = (random: Random, count: number): number[] =>
    Array.from({ length: count }, () => wholeBetween(random, 90, 600));

  /** With the most steps allowed on average to find and prove the cheapest plan: 2% more than when this was written. */
  const EFFORTS: readonly (readonly [string, (random: Random) => number[], readonly Stock[], number])[] = [
    ["of one length", (random) => triples(random, 9), [endless(CAPACITY)], 351],
    ["of two prices", (random) => drawn(random, 18), [endless(CAPACITY, 10), endless(700, 8)], 469],
    [
      "of three lengths, the best price last",
      (random) => drawn(random, 16),
      [endless(610, 7), endless(800, 9), endless(CAPACITY, 10)],
      564,
    ],
    [
      "in short supply",
      (random) => drawn(random, 16),
      [{ capacity: 800, cost: 5, limit: 2 }, { capacity: 900, cost: 7, limit: 2 }, endless(CAPACITY, 10)],
      2152,
    ],
  ];

  it.each(EFFORTS)("takes little work with stock %s", (_, draw, stocks, mostSteps) => {
    let steps = 0;
    for (const seed of SEEDS) {
      const problem = problemFrom(draw(randomFrom(seed)), stocks);
      const budget = new Budget(PLENTY);
      let most = Math.ceil(totalSize(problem) / 50);
      for (;;) {
        const found = planWithin(problem, most, budget);
        if (found === "undecided") throw new Error(`undecided for seed ${seed}`);
        if (found === "none") break;
        most = costOf(problem, found) - 1;
      }
      steps += PLENTY - budget.left;
    }
    expect(steps / SEEDS.length).toBeLessThanOrEqual(mostSteps);
  });
});
