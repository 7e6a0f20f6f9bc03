import { isMatrix, type Argument } from "../../shared/cell";
import { call } from "./call";

/** A cutting job as a person types it: runs in feet, all else in inches. */
export interface TypedJob {
  readonly runs: readonly number[];
  readonly stock: readonly number[];
  readonly lap?: number;
  readonly kerf?: number;
  readonly shortest?: number;
  readonly prices?: readonly number[];
  readonly limits?: readonly (number | null)[];
}

export interface CheckedCuts {
  readonly stocks: number;
  readonly price: number;
  readonly verdict: string;
  readonly longestLeftOver: number;
}

const inColumn = (values: readonly (number | null)[] | undefined): Argument =>
  values?.map((value) => [value]);

export const argumentsOf = (job: TypedJob): Argument[] => [
  inColumn(job.runs),
  inColumn(job.stock),
  job.lap,
  job.kerf,
  job.shortest,
  inColumn(job.prices),
  inColumn(job.limits),
];

/** `10' 2 1/2" run 3`: inches and run. */
const readPiece = (text: string): { inches: number; run: number } => {
  const match = /^(\d+)' (\d+)?(?: ?(\d+)\/(\d+))?" run (\d+)$/.exec(text);
  if (!match) throw new Error(`no piece: ${text}`);
  const [, feet, inches = 0, numerator = 0, denominator = 1, run] = match;
  return {
    inches: 12 * Number(feet) + Number(inches) + Number(numerator) / Number(denominator),
    run: Number(run),
  };
};

const TINY = 1e-6;

/** The fewest pieces that reach a run, counted up one by one. */
const fewestPieces = (runIn: number, longest: number, lap: number): number => {
  let pieces = 1;
  while (pieces * longest - (pieces - 1) * lap < runIn - TINY) pieces += 1;
  return pieces;
};

const fail = (reason: string, row: readonly unknown[]): never => {
  throw new Error(`${reason}: ${JSON.stringify(row)}`);
};

/**
 * Reads the plan that TRIMCUTS spills and checks it without any of the planner's code: every stock length exists and
 * holds its pieces and kerfs, every left-over is right, every run is covered by its fewest pieces with its laps, nothing
 * is too short, limits and prices are kept. Lengths must be on sixty-fourths, as the plan shows them.
 */
export const checkedCuts = (job: TypedJob): CheckedCuts => {
  const { runs, stock, lap = 0, kerf = 0, shortest = 0, prices, limits } = job;
  const answer = call("TRIMCUTS", ...argumentsOf(job), false);
  if (!isMatrix(answer)) throw new Error(`no plan: ${JSON.stringify(answer)}`);
  const rows = answer.slice(0, -1);
  const total = answer.at(-1) ?? [];
  const piecesOfRun = runs.map((): number[] => []);
  const used = stock.map(() => 0);
  let price = 0;
  rows.forEach((row, index) => {
    const [number, length, text, leftOver] = row as [number, number, string, number];
    const place = stock.indexOf(length);
    if (number !== index + 1 || place < 0) fail("no such stock", row);
    used[place] = (used[place] ?? 0) + 1;
    price += prices?.[place] ?? 0;
    if (prices && row[4] !== prices[place]) fail("wrong price", row);
    const pieces = text.split(", ").map(readPiece);
    const sum = pieces.reduce((inches, piece) => inches + piece.inches, 0);
    if (sum + (pieces.length - 1) * kerf > length + TINY) fail("too much for the stock", row);
    const left = Math.max(0, length - sum - pieces.length * kerf);
    if (Math.abs(left - leftOver) > TINY) fail(`left-over is ${left}`, row);
    for (const { inches, run } of pieces) (piecesOfRun[run - 1] ?? fail("no such run", row)).push(inches);
  });
  const longest = Math.max(...stock.filter((_, index) => limits?.[index] !== 0));
  piecesOfRun.forEach((pieces, index) => {
    const runIn = 12 * (runs[index] ?? 0);
    const reach = pieces.reduce((sum, inches) => sum + inches, 0) - Math.max(0, pieces.length - 1) * lap;
    if (Math.abs(reach - runIn) > TINY) fail(`run ${index + 1} of ${runIn} is covered by`, pieces);
    if (runIn > 0 && pieces.length !== fewestPieces(runIn, longest, lap)) fail("not the fewest", pieces);
    if (pieces.length > 1 && Math.min(...pieces) < shortest - TINY) fail("too short", pieces);
  });
  used.forEach((count, place) => {
    if (count > (limits?.[place] ?? Infinity)) fail(`more than there are of ${stock[place]}`, used);
  });
  const [label, length, verdict, leftOvers, totalPrice] = total;
  const sumOf = (column: number): number => rows.reduce((sum, row) => sum + (row[column] as number), 0);
  if (label !== "total" || Math.abs((length as number) - sumOf(1)) > TINY) fail("wrong total", total);
  if (Math.abs((leftOvers as number) - sumOf(3)) > TINY) fail("wrong left-overs", total);
  if (prices && Math.abs((totalPrice as number) - price) > TINY) fail("wrong price", total);
  return {
    stocks: rows.length,
    price,
    verdict: verdict as string,
    longestLeftOver: Math.max(0, ...rows.map((row) => row[3] as number)),
  };
};
