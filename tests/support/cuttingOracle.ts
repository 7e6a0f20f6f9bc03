import type { TrimJob } from "../../functions/trim/cutting/trimJob";

export interface TrimOracle {
  /** The least total price, or number of stock lengths, that the runs can be cut from; undefined if they can't be cut. */
  leastCost(job: TrimJob): number | undefined;
}

interface OracleStock {
  readonly lengthIn: number;
  readonly price: number;
}

interface OracleRun {
  readonly neededIn: number;
  readonly pieces: number;
}

/** Far more than the difference between the best and the second-best plan of so few pieces. */
const TINY = 1e-6;

/** Each run with its fewest pieces, whatever their lengths. */
const oracleRuns = ({ runs, stocks, lapIn = 0 }: TrimJob): OracleRun[] => {
  const longestIn = Math.max(...stocks.map(({ lengthIn }) => lengthIn));
  return runs.map(({ lengthFt }) => {
    let pieces = 1;
    while (pieces * longestIn - (pieces - 1) * lapIn < 12 * lengthFt - TINY) pieces += 1;
    return { pieces, neededIn: 12 * lengthFt + (pieces - 1) * lapIn };
  });
};

const sum = (terms: readonly string[]): string => terms.join(" + ");

/**
 * The job as a mixed-integer program: whether stock b is used (y), whether run r has a piece in it (z), and how long that
 * piece is (x). It knows nothing of whole lengths and remainders, or of a cutting order.
 */
const program = (job: TrimJob): string => {
  const runs = oracleRuns(job);
  const pieces = runs.reduce((total, run) => total + run.pieces, 0);
  const stocks: OracleStock[] = job.stocks.flatMap(({ lengthIn, price = 1, limit }) =>
    Array.from({ length: Math.min(limit, pieces) }, () => ({ lengthIn, price })),
  );
  const ofStock = (stock: number): string[] => [
    sum([
      ...runs.map((_, run) => `x${run}_${stock}`),
      ...runs.map((_, run) => `${job.kerfIn} z${run}_${stock}`),
    ]) + ` - ${(stocks[stock]?.lengthIn ?? 0) + job.kerfIn} y${stock} <= 0`,
    ...runs.map((_, run) => `x${run}_${stock} - ${stocks[stock]?.lengthIn} z${run}_${stock} <= 0`),
  ];
  const ofRun = ({ neededIn, pieces: count }: OracleRun, run: number): string[] => [
    `${sum(stocks.map((_, stock) => `x${run}_${stock}`))} = ${neededIn}`,
    `${sum(stocks.map((_, stock) => `z${run}_${stock}`))} = ${count}`,
  ];
  /** Identical stocks are used in order. Without this the solver tries every order. */
  const inOrder = stocks.flatMap((stock, index) =>
    index > 0 && stocks[index - 1]?.lengthIn === stock.lengthIn ? [`y${index - 1} - y${index} >= 0`] : [],
  );
  return [
    "Minimize",
    sum(stocks.map(({ price }, stock) => `${price} y${stock}`)),
    "Subject To",
    ...stocks.flatMap((_, stock) => ofStock(stock)),
    ...runs.flatMap(ofRun),
    ...inOrder,
    "Binary",
    ...stocks.map((_, stock) => `y${stock}`),
    ...runs.flatMap((_, run) => stocks.map((__, stock) => `z${run}_${stock}`)),
    "End",
  ].join("\n");
};

/** An independent solver to measure and test against: HiGHS (MIT), compiled to WebAssembly. It never ships. */
export const loadTrimOracle = async (): Promise<TrimOracle> => {
  const { default: load } = await import("highs");
  const highs = await load();
  return {
    leastCost: (job) => {
      const solution = highs.solve(program(job), { mip_rel_gap: 0, mip_abs_gap: TINY });
      if (solution.Status === "Infeasible") return undefined;
      if (solution.Status !== "Optimal") throw new Error(`the oracle ended with ${solution.Status}`);
      return Math.round(solution.ObjectiveValue * 100) / 100;
    },
  };
};
