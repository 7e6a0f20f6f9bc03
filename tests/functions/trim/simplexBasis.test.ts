import { Basis } from "../../../functions/trim/cutting/simplexBasis";
import { Rows } from "../../../functions/trim/cutting/fillingColumns";
import type { PackingProblem } from "../../../functions/trim/cutting/packingProblem";
import { DualSmoothing } from "../../../functions/trim/cutting/dualSmoothing";
import { endless } from "../../support/cutting";

describe("the rows and columns of a cutting problem", () => {
  const problem: PackingProblem = {
    sizes: [50, 40, 30, 20],
    counts: [1, 3, 0, 2],
    stocks: [endless(60, 5), endless(100, 8), { capacity: 120, cost: 1, limit: 0 }],
  };
  const rows = new Rows(problem);

  it("have a row for every size in demand", () => {
    expect(rows.items).toEqual([0, 1, 3]);
    expect(rows.demands).toEqual([1, 3, 2]);
    expect(rows.dualsBySize(Float64Array.from([7, 6, 5]))).toEqual([7, 6, 0, 5]);
  });

  it("start with homogeneous fillings, in the stock where a piece is cheapest", () => {
    const bins = rows.initialColumns?.map(({ bin }) => bin);
    // One of 50 in stock of 60; two of 40 in stock of 100 at 4 each, not one at 5; both of 20 in stock of 60.
    expect(bins).toEqual([
      { stock: 0, items: [0] },
      { stock: 1, items: [1, 1] },
      { stock: 0, items: [3, 3] },
    ]);
    expect(new Rows({ ...problem, stocks: [endless(45)] }).initialColumns).toBeUndefined();
  });

  it("turn a filling into a column with the count of each size", () => {
    const bin = { stock: 1, items: [0, 3, 3] };
    expect(rows.columnOf(bin)).toEqual({ bin, cost: 8, rows: [0, 2], times: [1, 2] });
  });

  it("know whether the stock and all the pieces of a filling are available", () => {
    const isAvailable = (stock: number, ...items: number[]): boolean => rows.isAvailable({ stock, items });
    expect([isAvailable(0, 0), isAvailable(1, 1, 1), isAvailable(1, 0, 3, 3)]).toEqual([true, true, true]);
    expect([isAvailable(2, 0), isAvailable(1, 0, 0), isAvailable(0, 2), isAvailable(1, 1, 2)]).toEqual(
      Array(4).fill(false),
    );
  });

  it("give duals by length at the best price of stock", () => {
    const [first, second, third] = new Rows({ ...problem, stocks: problem.stocks.slice(0, 2) }).dualsByLength;
    expect([first, second, third]).toEqual([50 * 0.08, 40 * 0.08, 20 * 0.08]);
  });

  describe("dual smoothing", () => {
    const ofStock = new Rows({ ...problem, stocks: problem.stocks.slice(0, 2) });

    it("starts with duals by length, and goes halfway to others", () => {
      const smoothing = new DualSmoothing(ofStock);
      expect(smoothing.bound).toBeCloseTo(210 * 0.08, 9);
      expect([...smoothing.smooth(Float64Array.from([6, 0, 2]))]).toEqual([5, 1.6, 1.8]);
    });

    it("moves its center to a better bound, scaled to be dual feasible", () => {
      const smoothing = new DualSmoothing(ofStock);
      const before = [...smoothing.center];
      smoothing.update(Float64Array.from([1, 1, 1]), 1);
      expect([...smoothing.center]).toEqual(before);
      smoothing.update(Float64Array.from([10, 10, 2]), 2);
      expect([smoothing.bound, ...smoothing.center]).toEqual([22, 5, 5, 1]);
    });
  });
});

describe("a simplex basis", () => {
  const one = (row: number, cost: number, times = 1) => ({ cost, rows: [row], times: [times] });

  it("starts with one column for each row", () => {
    const basis = new Basis([one(0, 6, 2), one(1, 5)], [8, 3]);
    expect([[...basis.amounts], [...basis.duals], basis.cost]).toEqual([[4, 3], [3, 5], 39]);
    expect(basis.valueOf({ cost: 0, rows: [0, 1], times: [2, 1] })).toBe(11);
  });

  it("brings in a column for the one that it drives to 0 first", () => {
    const basis = new Basis([one(0, 6, 2), one(1, 5)], [8, 3]);
    const both = { cost: 7, rows: [0, 1], times: [1, 1] };
    expect(basis.enter(both)).toBe(true);
    expect(basis.columns[1]).toBe(both);
    expect([[...basis.amounts], basis.cost]).toEqual([[2.5, 3], 36]);
    expect([...basis.duals]).toEqual([3, 4]);
  });

  it("rejects a column that drives none to 0", () => {
    const basis = new Basis([one(0, 6, 2), one(1, 5)], [8, 3]);
    expect(basis.enter({ cost: 0, rows: [0], times: [-1] })).toBe(false);
    expect(basis.enter({ cost: 0, rows: [], times: [] })).toBe(false);
    expect([[...basis.amounts], [...basis.duals], basis.cost]).toEqual([[4, 3], [3, 5], 39]);
  });

  it("breaks a tie by the larger pivot", () => {
    const basis = new Basis([one(0, 6), one(1, 5)], [2, 6]);
    basis.enter({ cost: 1, rows: [0, 1], times: [1, 3] });
    expect(basis.columns.map(({ cost }) => cost)).toEqual([6, 1]);
    expect([...basis.amounts]).toEqual([0, 2]);
  });
});
