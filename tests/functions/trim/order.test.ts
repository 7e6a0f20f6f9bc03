import { cutPlan } from "../../../functions/trim/cutting/cutPlan";
import { ticksRoundedUp } from "../../../functions/trim/cutting/ticks";
import { materialOf } from "../../../functions/trim/cutting/material";
import { splitOptions } from "../../../functions/trim/cutting/planWithinLimits";
import type { TrimJob } from "../../../functions/trim/cutting/trimJob";

const jobOf = (runsIn: readonly number[], kerfIn = 0): TrimJob => ({
  runs: runsIn.map((lengthIn, index) => ({ number: index + 1, lengthFt: lengthIn / 12 })),
  stocks: [{ lengthIn: 120, limit: Infinity }],
  lapIn: 0,
  kerfIn,
  shortestIn: 0,
});

describe("the order of a plan", () => {
  const piecesOf = (...runsIn: number[]): (readonly [number, number])[][] =>
    cutPlan(jobOf(runsIn)).stocks.map(({ pieces }) =>
      pieces.map(({ run, lengthIn }) => [run, Math.round(lengthIn)] as const),
    );

  it("follows the lowest run number of each stock, and then the run", () => {
    // The remainder of the longer run is as long as the shorter run.
    expect(piecesOf(40, 160)).toEqual([
      [
        [1, 40],
        [2, 40],
      ],
      [[2, 120]],
    ]);
    expect(piecesOf(160, 40)).toEqual([
      [[1, 120]],
      [
        [1, 40],
        [2, 40],
      ],
    ]);
  });

  it("is from the longest piece to the shortest within a stock", () => {
    expect(piecesOf(20, 30, 70)).toEqual([
      [
        [3, 70],
        [2, 30],
        [1, 20],
      ],
    ]);
  });
});

describe("the runs to split", () => {
  const splits = (runsIn: readonly number[], kerfIn?: number) => {
    const job = jobOf(runsIn, kerfIn);
    return splitOptions(job, materialOf(job), 120);
  };

  it("are in order from the longest, with equal lengths by number", () => {
    expect(splits([30, 50, 40, 50, 30]).map(({ run }) => run)).toEqual([2, 4, 3, 1, 5]);
  });

  it("take at least their length and a kerf, and nothing where the length is 0", () => {
    expect(splits([30, 0], 1).map(({ leastSize }) => leastSize)).toEqual([ticksRoundedUp(31), 0]);
  });
});
