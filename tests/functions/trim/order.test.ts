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

  it("is that of the lowest run that each stock serves, and then of the run", () => {
    // What a longer run leaves over is as long as a whole shorter one.
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

  it("is within a stock from the longest piece to the shortest", () => {
    expect(piecesOf(20, 30, 70)).toEqual([
      [
        [3, 70],
        [2, 30],
        [1, 20],
      ],
    ]);
  });
});

describe("the runs to make up", () => {
  const splits = (runsIn: readonly number[], kerfIn?: number) => {
    const job = jobOf(runsIn, kerfIn);
    return splitOptions(job, materialOf(job), 120);
  };

  it("are the longest first, and of the same length the lowest number first", () => {
    expect(splits([30, 50, 40, 50, 30]).map(({ run }) => run)).toEqual([2, 4, 3, 1, 5]);
  });

  it("take at the least their length and a kerf, and nothing where they have no length", () => {
    expect(splits([30, 0], 1).map(({ leastSize }) => leastSize)).toEqual([ticksRoundedUp(31), 0]);
  });
});
