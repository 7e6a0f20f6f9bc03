import type { Column } from "./basis";
import type { Bin, Problem } from "./packingProblem";

/** A filling, or, without one, a piece cut down to the next smaller size. */
export interface FillingColumn extends Column {
  readonly bin?: Bin;
}

/** As many of one size as go into the stock where that is cheapest. */
const alone = ({ counts, sizes, stocks }: Problem, item: number): Bin | undefined => {
  const ways = stocks.flatMap(({ capacity, cost, limit }, stock) => {
    const fit = Math.min(counts[item] ?? 0, Math.floor(capacity / (sizes[item] ?? 1)));
    return fit > 0 && limit > 0 ? [{ stock, fit, each: cost / fit }] : [];
  });
  const [first, ...others] = ways;
  const best = first && others.reduce((a, b) => (b.each < a.each ? b : a), first);
  return best && { stock: best.stock, items: Array.from({ length: best.fit }, () => item) };
};

/** The sizes of which there are pieces, a row each, and fillings as columns over these rows. */
export class Rows {
  readonly items: readonly number[];
  private readonly rowOf: ReadonlyMap<number, number>;

  constructor(private readonly problem: Problem) {
    this.items = problem.sizes.map((_, item) => item).filter((item) => (problem.counts[item] ?? 0) > 0);
    this.rowOf = new Map(this.items.map((item, row) => [item, row] as const));
  }

  /** A column of each row's pieces alone; undefined where some go into no stock that there still is. */
  get firstColumns(): FillingColumn[] | undefined {
    const bins = this.items.flatMap((item) => alone(this.problem, item) ?? []);
    return bins.length === this.items.length ? bins.map((bin) => this.columnOf(bin)) : undefined;
  }

  get demands(): number[] {
    return this.items.map((item) => this.problem.counts[item] ?? 0);
  }

  /** What a piece of each row is worth by its length, where stock is bought at its best price. */
  get worthsByLength(): number[] {
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

  /** Whether there still are the stock and all the pieces. */
  isThere({ stock, items }: Bin): boolean {
    const { stocks, counts } = this.problem;
    if ((stocks[stock]?.limit ?? 0) <= 0) return false;
    return items.every((item) => items.filter((each) => each === item).length <= (counts[item] ?? 0));
  }

  worthsOfSizes(worths: Float64Array): number[] {
    const all = this.problem.sizes.map(() => 0);
    this.items.forEach((item, row) => (all[item] = worths[row] ?? 0));
    return all;
  }
}
