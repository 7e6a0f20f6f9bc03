/** One line of the bench's table. */
export interface BenchRow {
  readonly name: string;
  /** What the time should grow with. */
  readonly size: number;
  readonly ms: number;
  /** Time for each unit of size against that of the table's first row: 1 is linear growth. */
  readonly ratio: number;
  /** Time against that of an independent implementation, in the same run on the same input. */
  readonly oracleRatio?: number;
  /** The most that it may take, where there is a limit. */
  readonly limitMs?: number;
}

/** Something measured that is no time of a calculation. */
export interface Measure {
  readonly name: string;
  readonly value: number;
  readonly unit: "kB" | "MB" | "ms";
  /** The most that it may be, where there is a limit. */
  readonly most?: number;
}

const WARM_UP = 120;
const RUNS = 31;

export const medianOf = (times: readonly number[]): number =>
  [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? NaN;

/** The median of some runs, after others that let the engine compile. */
export const medianMs = (run: () => unknown, warmUp = WARM_UP, runs = RUNS): number => {
  for (let i = 0; i < warmUp; i++) run();
  return medianOf(
    Array.from({ length: runs }, () => {
      const before = performance.now();
      run();
      return performance.now() - before;
    }),
  );
};
