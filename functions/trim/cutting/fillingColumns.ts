import type { Column } from "./simplexBasis";
import type { Bin, PackingProblem } from "./packingProblem";

/** The column of a filling; without a bin, an exchange column, where a piece is cut down to the next smaller size. */
export interface FillingColumn extends Column {
  readonly bin?: Bin;
}

/** The homogeneous filling of a size: as many as fit, in the stock where one piece costs the least. */
const homogeneousFilling = ({ counts, sizes, stocks }: PackingProblem, item: number): Bin | undefined => {
  const options = stocks.flatMap(({ capacity, cost, limit }, stock) => {
    const fit = Math.min(counts[item] ?? 0, Math.floor(capacity / (sizes[item] ?? 1)));
    return fit > 0 && limit > 0 ? [{ stock, fit, each: cost / fit }] : [];
  });
  const [first, ...others] = options;
  const best = first && others.reduce((a, b) => (b.each < a.each ? b : a), first);
  return best && { stock: best.stock, items: Array.from({ length: best.fit }, () => item) };
};

/** The rows of the master problem, one for each size still in demand, and its columns, one for each filling. */
export class Rows {
  readonly items: readonly number[];
  private readonly rowOf: ReadonlyMap<number, number>;

  constructor(private readonly problem: PackingProblem) {
    this.items = problem.sizes.map((_, item) => item).filter((item) => (problem.counts[item] ?? 0) > 0);
    this.rowOf = new Map(this.items.map((item, row) => [item, row] as const));
  }

  /** A homogeneous column for each row. Undefined where some size fits no available stock. */
  get initialColumns(): FillingColumn[] | undefined {
    const bins = this.items.flatMap((item) => homogeneousFilling(this.problem, item) ?? []);
    return bins.length === this.items.length ? bins.map((bin) => this.columnOf(bin)) : undefined;
  }

  get demands(): number[] {
    return this.items.map((item) => this.problem.counts[item] ?? 0);
  }

  /** The dual of a piece of each row by its length, at the best price per length of stock. */
  get dualsByLength(): number[] {
    const { sizes, stocks } = this.problem;
    const bestPrice = Math.min(...stocks.map(({ cost, capacity }) => cost / capacity));
    return this.items.map((item) => bestPrice * (sizes[item] ?? 0));
  }

  columnOf(bin: Bin): FillingColumn {
    const held = [...new Set(bin.items)];
    return {
      bin,
      cost: this.problem.stocks[bin.stock]?.cost ?? 0,
      rows: held.map((item) => this.rowOf.get(item) ?? -1),
      times: held.map((item) => bin.items.filter((each) => each === item).length),
    };
  }

  /** Whether the stock and all the pieces are still available. */
  isAvailable({ stock, items }: Bin): boolean {
    const { stocks, counts } = this.problem;
    if ((stocks[stock]?.limit ?? 0) <= 0) return false;
    return items.every((item) => items.filter((each) => each === item).length <= (counts[item] ?? 0));
  }

  dualsBySize(duals: Float64Array): number[] {
    const all = this.problem.sizes.map(() => 0);
    this.items.forEach((item, row) => (all[item] = duals[row] ?? 0));
    return all;
  }
}
