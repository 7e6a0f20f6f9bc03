import { loadTrimOracle, type TrimOracle } from "../../support/cuttingOracle";
import { oneOf, randomFrom, wholeBetween, type Random } from "../../support/random";
import { trimJob } from "../../../functions/trim/cutting/trimJob";
import { call } from "../../support/call";
import { argumentsOf, checkedCuts, type TypedJob } from "../../support/checkedCuts";

let oracle: TrimOracle;
beforeAll(async () => {
  oracle = await loadTrimOracle();
});

const leastCost = (job: TypedJob): number | undefined =>
  oracle.leastCost(
    trimJob(
      job.runs,
      job.stock,
      job.lap,
      job.kerf ?? 0,
      job.shortest ?? 0,
      job.prices,
      job.limits?.map((limit) => limit ?? undefined),
    ),
  );

/** In eighths of an inch, which a plan shows exactly. */
const runsOf = (random: Random, count: number, mostIn: number): number[] =>
  Array.from({ length: count }, () => wholeBetween(random, 8 * 4, 8 * mostIn) / 8 / 12);

const seeds = (count: number): number[] => Array.from({ length: count }, (_, index) => index + 1);

describe("a general mixed-integer solver finds no better plan, and only optimal plans are called proved", () => {
  it.each(seeds(25))("pieces of up to a stock length, seed %d", (seed) => {
    const random = randomFrom(seed);
    const kerf = oneOf(random, [0, 1 / 8]);
    const job = { runs: runsOf(random, wholeBetween(random, 4, 9), 100), stock: [120], kerf };
    const cuts = checkedCuts(job);
    expect(cuts.verdict).toBe("proved fewest");
    expect(cuts.stocks).toBe(leastCost(job));
  });

  it.each(seeds(25))("runs with laps, seed %d", (seed) => {
    const random = randomFrom(1000 + seed);
    const runs = runsOf(random, wholeBetween(random, 2, 5), 300);
    const job = { runs, stock: [120], lap: oneOf(random, [0, 2, 3]), kerf: oneOf(random, [0, 1 / 8]) };
    const cuts = checkedCuts(job);
    expect(cuts.verdict).toBe("proved fewest");
    expect(cuts.stocks).toBe(leastCost(job));
  });

  it.each(seeds(25))("several stock lengths with prices, seed %d", (seed) => {
    const random = randomFrom(2000 + seed);
    const runs = runsOf(random, wholeBetween(random, 2, 4), 260);
    const prices = [wholeBetween(random, 900, 1100) / 100, wholeBetween(random, 1100, 1300) / 100];
    const job = {
      runs,
      stock: [120, 144],
      lap: oneOf(random, [0, 2]),
      kerf: oneOf(random, [0, 1 / 8]),
      prices,
    };
    const cuts = checkedCuts(job);
    expect(cuts.verdict).toBe("proved cheapest");
    expect(cuts.price).toBeCloseTo(leastCost(job) ?? NaN, 6);
  });

  it.each(seeds(25))("several stock lengths with prices and limits, seed %d", (seed) => {
    const random = randomFrom(3000 + seed);
    const runs = runsOf(random, wholeBetween(random, 3, 6), 110);
    const job = {
      runs,
      stock: [120, 96, 144],
      kerf: 1 / 8,
      prices: [10, oneOf(random, [7.5, 8.25]), oneOf(random, [11.75, 12.5])],
      limits: [wholeBetween(random, 0, 2), wholeBetween(random, 0, 3), wholeBetween(random, 0, 2)],
    };
    const least = job.limits.every((limit) => limit === 0) ? undefined : leastCost(job);
    if (least === undefined) {
      expect(call("TRIMCUTS", ...argumentsOf(job))).toMatchObject({ code: "#N/A" });
      return;
    }
    const cuts = checkedCuts(job);
    expect(cuts.verdict).toBe("proved cheapest");
    expect(cuts.price).toBeCloseTo(least, 6);
  });
});
