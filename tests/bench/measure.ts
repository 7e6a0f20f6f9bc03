/** One line of the bench's table. */
export interface BenchRow {
  readonly name: string;
  /** The size that the time should grow with. */
  readonly size: number;
  readonly ms: number;
  /** Time per unit of size, relative to the first row of the table: 1 is linear growth. */
  readonly ratio: number;
  /** Time relative to an independent implementation in the same run, on the same input. */
  readonly oracleRatio?: number;
  /** The limit, if there is one. */
  readonly limitMs?: number;
}

/** A measurement other than the time of a calculation. */
export interface Measure {
  readonly name: string;
  readonly value: number;
  readonly unit: "kB" | "MB" | "ms";
  /** The limit, if there is one. */
  readonly most?: number;
}

const WARM_UP = 120;
const RUNS = 31;

export const medianOf = (times: readonly number[]): number =>
  [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? NaN;

/** The median of several runs, after warm-up runs that let the engine compile. */
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
