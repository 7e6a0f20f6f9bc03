import fc from "fast-check";
import { call, callForNumber } from "../../support/call";
import { argumentsOf, checkedCuts, type TypedJob } from "../../support/checkedCuts";
import { everyPacking } from "../../support/everyPacking";

const STOCK = 120;
/** Whole eighths of an inch, in feet. */
const feet = (leastIn: number, mostIn: number) =>
  fc.integer({ min: leastIn * 8, max: mostIn * 8 }).map((eighths) => eighths / 96);
const lap = fc.constantFrom(0, 2, 3.5);
const kerf = fc.constantFrom(0, 1 / 8);
const runs = (most: number, mostIn: number) => fc.array(feet(4, mostIn), { minLength: 1, maxLength: most });

const job = (mostRuns: number, mostIn: number): fc.Arbitrary<TypedJob> =>
  fc.record({ runs: runs(mostRuns, mostIn), stock: fc.constant([STOCK]), lap, kerf });

describe("laws of cutting", () => {
  it("every plan of a roof's runs can be cut, covers its runs, and is proved", () => {
    fc.assert(
      fc.property(job(24, 480), fc.constantFrom(0, 6, 12), (typed, shortest) => {
        expect(checkedCuts({ ...typed, shortest }).verdict).toBe("proved fewest");
      }),
    );
  });

  it("a longer run, or one more run, never needs less", () => {
    fc.assert(
      fc.property(job(10, 400), fc.nat(9), feet(0, 200), (typed, index, more) => {
        const stocksOf = (lengths: readonly number[]): number =>
          callForNumber("TRIMSTOCK", ...argumentsOf({ ...typed, runs: lengths }));
        const before = stocksOf(typed.runs);
        const longer = typed.runs.map((run, at) => (at === index % typed.runs.length ? run + more : run));
        expect(stocksOf(longer)).toBeGreaterThanOrEqual(before);
        expect(stocksOf([...typed.runs, more])).toBeGreaterThanOrEqual(before);
      }),
    );
  });

  it("a run of exactly n stock lengths with no lap takes n, whatever the stock length", () => {
    const stockIn = fc.double({ min: 1, max: 400, noNaN: true });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), stockIn, fc.constantFrom(0, 1 / 8), (n, stock, saw) => {
        expect(callForNumber("TRIMSTOCK", (n * stock) / 12, stock, 0, saw)).toBe(n);
      }),
    );
  });

  it("a plan can be cut whatever the lengths: the pieces of a stock never exceed it", () => {
    const odd = fc.double({ min: 0.01, max: 30, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(odd, { minLength: 1, maxLength: 8 }),
        fc.double({ min: 1, max: 30, noNaN: true }),
        (lengths, stockFt) => {
          const rows = call(
            "TRIMCUTS",
            lengths.map((each) => [each]),
            stockFt * 12,
            0,
            0,
            0,
            null,
            null,
            false,
          );
          const leftOvers = (rows as number[][]).slice(0, -1).map((row) => row[3] as number);
          const bought = (rows as number[][]).at(-1)?.[1] as number;
          const used = lengths.reduce((sum, each) => sum + each * 12, 0);
          expect(Math.min(...leftOvers)).toBeGreaterThanOrEqual(0);
          const wasted = leftOvers.reduce((sum, each) => sum + each, 0);
          expect(Math.abs(bought - used - wasted)).toBeLessThanOrEqual(1e-5 + 1e-8 * bought);
        },
      ),
    );
  });

  it("lap and kerf of 0 give plain bin packing: as few lengths and as long a left-over as exhaustive search finds", () => {
    fc.assert(
      fc.property(runs(7, STOCK), (lengths) => {
        const cuts = checkedCuts({ runs: lengths, stock: [STOCK], lap: 0, kerf: 0 });
        const best = everyPacking(
          lengths.map((each) => each * 12),
          STOCK,
        );
        expect(cuts.stocks).toBe(best.stocks);
        expect(cuts.longestLeftOver).toBeCloseTo(best.leftOver, 6);
        expect(callForNumber("TRIMSTOCK", ...argumentsOf({ runs: lengths, stock: [STOCK] }))).toBe(
          best.stocks,
        );
      }),
    );
  });

  it("the answer is the same the second time, and the count is the same in any order of the runs", () => {
    fc.assert(
      fc.property(job(16, 300), (typed) => {
        const table = call("TRIMCUTS", ...argumentsOf(typed));
        expect(call("TRIMCUTS", ...argumentsOf(typed))).toEqual(table);
        const turned = { ...typed, runs: [...typed.runs].reverse() };
        expect(checkedCuts(turned).stocks).toBe(checkedCuts(typed).stocks);
      }),
    );
  });

  it("neither a second stock length nor a lower price makes a plan more expensive", () => {
    fc.assert(
      fc.property(runs(6, 110), fc.integer({ min: 700, max: 1300 }), kerf, (lengths, cents, saw) => {
        const one = { runs: lengths, stock: [STOCK], kerf: saw, prices: [10] };
        const two = { ...one, stock: [STOCK, 96], prices: [10, cents / 100] };
        const cheaper = { ...two, prices: [10, (cents - 100) / 100] };
        const [price, withTwo, withCheaper] = [one, two, cheaper].map((each) => checkedCuts(each).price);
        expect(withTwo).toBeLessThanOrEqual((price ?? NaN) + 1e-9);
        expect(withCheaper).toBeLessThanOrEqual((withTwo ?? NaN) + 1e-9);
      }),
    );
  });
});

interface Face {
  readonly eave: number;
  readonly slope: number;
  readonly headLap: number;
  readonly endLap: number;
  readonly wrap: number;
}

describe("laws of underlayment", () => {
  const face: fc.Arbitrary<Face> = fc.record({
    eave: fc.double({ min: 1, max: 200, noNaN: true }),
    slope: fc.double({ min: 1, max: 60, noNaN: true }),
    headLap: fc.constantFrom(0, 2, 19),
    endLap: fc.constantFrom(0, 4, 6),
    wrap: fc.constantFrom(0, 1, 3),
  });
  const rollsOf = (of: Face, rollIn = 800): number => {
    const { eave, slope, headLap, endLap, wrap } = of;
    return callForNumber("UNDERLAYMENT", eave, slope, 36, rollIn, headLap, endLap, wrap);
  };

  it("a larger face, a larger lap or wrap never takes fewer rolls", () => {
    fc.assert(
      fc.property(face, fc.double({ min: 0, max: 20, noNaN: true }), (of, more) => {
        const least = rollsOf(of);
        for (const larger of [
          { ...of, eave: of.eave + more },
          { ...of, slope: of.slope + more },
          { ...of, headLap: of.headLap + 1 },
          { ...of, endLap: of.endLap + 1 },
          { ...of, wrap: of.wrap + 1 },
        ])
          expect(rollsOf(larger)).toBeGreaterThanOrEqual(least);
      }),
    );
  });

  it("rolls of half the length with no end lap are twice as many, or one fewer", () => {
    fc.assert(
      fc.property(face, (of) => {
        const whole = rollsOf({ ...of, endLap: 0 });
        const halves = rollsOf({ ...of, endLap: 0 }, 400);
        expect([2 * whole - 1, 2 * whole]).toContain(halves);
      }),
    );
  });

  it("the rolls cover every course with its laps, and one fewer would not", () => {
    fc.assert(
      fc.property(face, (of) => {
        const { eave, slope, headLap, endLap, wrap } = of;
        let courses = 1;
        while (courses * 36 - (courses - 1) * headLap < slope * 12 + 2 * wrap - 1e-6) courses += 1;
        const neededIn = courses * (eave * 12 + 2 * wrap);
        const reachOf = (rolls: number): number => rolls * 800 - (rolls - 1) * endLap;
        const rolls = rollsOf(of);
        expect(reachOf(rolls)).toBeGreaterThanOrEqual(neededIn - 1e-3);
        if (rolls > 1) expect(reachOf(rolls - 1)).toBeLessThan(neededIn + 1e-3);
      }),
    );
  });
});
