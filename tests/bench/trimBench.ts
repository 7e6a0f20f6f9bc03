import { cutPlan } from "../../functions/trim/cutting/cutPlan";
import { trimJob, type TrimJob } from "../../functions/trim/cutting/trimJob";
import { medianMs, type BenchRow } from "./measure";
import { hasOpenSets, packingSet, packingSets, type PackingSet } from "../support/openPackingSets";
import { randomFrom, wholeBetween } from "../support/random";
import { loadTrimOracle } from "../support/cuttingOracle";

const STOCK_IN = 120;
const KERF_IN = 1 / 8;

const jobOf = (lengthsIn: readonly number[], stockIn: number, kerfIn: number): TrimJob =>
  trimJob(
    lengthsIn.map((lengthIn) => lengthIn / 12),
    [stockIn],
    0,
    kerfIn,
    0,
    undefined,
    undefined,
  );

/** Random runs up to one stock length, in sixteenths of an inch, like the remainders of real runs. */
const roofJob = (seed: number, pieces: number): TrimJob => {
  const random = randomFrom(seed);
  const lengthsIn = Array.from({ length: pieces }, () => wholeBetween(random, 6 * 16, STOCK_IN * 16) / 16);
  return jobOf(lengthsIn, STOCK_IN, KERF_IN);
};

interface Timed {
  readonly medianMs: number;
  readonly slowestMs: number;
  readonly unproved: number;
}

const RUNS = 5;

/** Times each job separately. The first pass lets the engine compile. */
const timed = (jobs: readonly TrimJob[]): Timed => {
  jobs.forEach(cutPlan);
  const times = jobs.map((job) => medianMs(() => cutPlan(job), 1, RUNS)).sort((a, b) => a - b);
  return {
    medianMs: times[Math.floor(times.length / 2)] ?? NaN,
    slowestMs: times.at(-1) ?? NaN,
    unproved: jobs.filter((job) => !cutPlan(job).verdict.startsWith("proved")).length,
  };
};

const SIZES = [10, 20, 40, 80];
const JOBS_OF_A_SIZE = 75;
const ROOF_LIMIT_MS = 5;

const roofRows = (): BenchRow[] => {
  const samples = SIZES.map((size) => ({
    size,
    times: timed(Array.from({ length: JOBS_OF_A_SIZE }, (_, index) => roofJob(size * 1000 + index, size))),
  }));
  const [first] = samples;
  const perPiece = first ? first.times.medianMs / first.size : NaN;
  return samples.flatMap(({ size, times }): BenchRow[] => [
    {
      name: `TRIMCUTS: ${JOBS_OF_A_SIZE} roofs of ${size} pieces, median`,
      size,
      ms: times.medianMs,
      ratio: times.medianMs / size / perPiece,
      limitMs: ROOF_LIMIT_MS,
    },
    {
      name: `  slowest of them; ${times.unproved} unproved`,
      size,
      ms: times.slowestMs,
      ratio: times.slowestMs / size / perPiece,
    },
  ]);
};

const LARGEST_ROOF = 80;
const LARGEST_ROOFS = 960;

/** Hard roofs are rare. This many of the largest include some. */
const largestRoofsRow = (): BenchRow => {
  const jobs = Array.from({ length: LARGEST_ROOFS }, (_, index) => roofJob(index, LARGEST_ROOF));
  const { slowestMs, unproved } = timed(jobs);
  const provedShare = (100 * (LARGEST_ROOFS - unproved)) / LARGEST_ROOFS;
  return {
    name: `TRIMCUTS: ${LARGEST_ROOFS} roofs of ${LARGEST_ROOF} pieces, slowest; ${provedShare.toFixed(1)} % proved`,
    size: LARGEST_ROOF,
    ms: slowestMs,
    ratio: 1,
  };
};

const SMALL_JOBS = 12;
const SMALL_SIZE = 9;

/** The general solver takes minutes for a whole roof, so it is measured on a few pieces. */
const oracleRow = async (): Promise<BenchRow> => {
  const oracle = await loadTrimOracle();
  const jobs = Array.from({ length: SMALL_JOBS }, (_, index) => roofJob(index, SMALL_SIZE));
  const all = (run: (job: TrimJob) => unknown) => () => {
    jobs.forEach(run);
  };
  const ms = medianMs(all(cutPlan), 20, 15) / SMALL_JOBS;
  const oracleMs = medianMs(all(oracle.leastCost), 1, 3) / SMALL_JOBS;
  return {
    name: `TRIMCUTS: ${SMALL_SIZE} pieces`,
    size: SMALL_SIZE,
    ms,
    ratio: 1,
    oracleRatio: ms / oracleMs,
  };
};

const OPEN_LIMIT_MS = 1000;

const openRow = (name: string, sets: readonly PackingSet[]): BenchRow => {
  const { slowestMs, unproved } = timed(sets.map(({ capacity, sizes }) => jobOf(sizes, capacity, 0)));
  const size = sets[0]?.sizes.length ?? 0;
  return {
    name: `TRIMCUTS: ${sets.length} open sets ${name}, slowest; ${unproved} unproved`,
    size,
    ms: slowestMs,
    ratio: 1,
    limitMs: OPEN_LIMIT_MS,
  };
};

const openRows = (): BenchRow[] =>
  hasOpenSets
    ? [
        openRow("u120", packingSets("binpack1_u120.txt")),
        openRow("u250", packingSets("binpack2_u250.txt")),
        openRow(
          "t120",
          ["00", "01", "02"].map((number) => packingSet(`Falkenauer_t120_${number}.txt`)),
        ),
      ]
    : [];

/** Cutting plans by roof size, against a general solver, and on the open sets if they are available. */
export const trimBench = async (): Promise<BenchRow[]> => [
  ...roofRows(),
  largestRoofsRow(),
  await oracleRow(),
  ...openRows(),
];
