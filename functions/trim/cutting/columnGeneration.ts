import { Basis } from "./simplexBasis";
import type { Budget } from "./budget";
import { Rows, type FillingColumn } from "./fillingColumns";
import type { Bin, PackingProblem } from "./packingProblem";
import { DualSmoothing } from "./dualSmoothing";
import { bestFilling } from "./bestFilling";

/** The solution of the LP relaxation: each filling may be used a fractional number of times. */
export interface Relaxation {
  readonly uses: readonly { readonly bin: Bin; readonly times: number }[];
  /** The dual value of one piece of each size. */
  readonly duals: readonly number[];
}

/** When column generation that is after a bound may stop early. */
export interface StopAt {
  /** At this lower bound: it is high enough. */
  readonly bound: number;
  /** At this cost of the relaxation: no useful bound is possible any more. */
  readonly cost: number;
}

const TINY = 1e-9;

/** The known filling with the highest value for its cost under the duals of the basis. */
const bestPooled = (basis: Basis<FillingColumn>, known: readonly FillingColumn[]) => {
  let [best, bestGain]: [FillingColumn | undefined, number] = [undefined, 1 + TINY];
  for (const column of known) {
    const gain = basis.valueOf(column) / column.cost;
    if (gain > bestGain) [best, bestGain] = [column, gain];
  }
  return best;
};

/** A filling, and its value divided by its cost. */
interface PricedFilling {
  readonly bin: Bin;
  readonly gain: number;
}

/** The pricing problem: the filling with the highest value for its cost. Undefined where none is worth more than it costs. */
const priceOut = (
  problem: PackingProblem,
  duals: readonly number[],
  budget: Budget,
): PricedFilling | undefined | "undecided" => {
  let best: PricedFilling | undefined;
  for (const [stock, { capacity, cost, limit }] of problem.stocks.entries()) {
    if (limit <= 0) continue;
    const found = bestFilling(problem, duals, capacity, cost * (1 + TINY), budget);
    if (found === "undecided") return found;
    const gain = found ? found.value / cost : 0;
    if (found && gain > (best?.gain ?? 0)) best = { bin: { stock, items: found.items }, gain };
  }
  return best;
};

/**
 * The exchange column of a piece whose dual is less than that of the next smaller one, which it may be cut down to, or
 * less than 0, as it may be thrown away.
 */
const exchangeColumn = (duals: Float64Array, withExchange: boolean): FillingColumn | undefined => {
  let most = 0;
  for (const dual of duals) if (dual > most) most = dual;
  let [row, least] = [-1, -TINY * most];
  for (let index = 0; index < duals.length; index++) {
    const gap = (duals[index] ?? 0) - (withExchange ? (duals[index + 1] ?? 0) : 0);
    if (gap < least) [row, least] = [index, gap];
  }
  if (row < 0) return undefined;
  const isExchange = withExchange && row + 1 < duals.length;
  return isExchange
    ? { cost: 0, rows: [row, row + 1], times: [-1, 1] }
    : { cost: 0, rows: [row], times: [-1] };
};

/**
 * Solves the LP relaxation of the cutting-stock problem by column generation: each turn brings in the filling with the
 * highest value for its cost under the current duals (Gilmore and Gomory 1961, from memory). `pool` keeps the fillings
 * for the next call. `withExchange` adds exchange columns, which are dual cuts (Valério de Carvalho 2005, from memory):
 * it finishes sooner, but its fillings may hold pieces that are cut down. Dual smoothing reaches a bound sooner but
 * leaves worse fillings to dive from, so it serves only where `stopAt` asks for a bound. Undefined where the budget
 * ends. Floating point proves nothing: `dualBound` does.
 */
export const solveRelaxation = (
  problem: PackingProblem,
  pool: Bin[],
  withExchange: boolean,
  budget: Budget,
  stopAt?: StopAt,
): Relaxation | undefined => {
  const rows = new Rows(problem);
  const known = pool.filter((bin) => rows.isAvailable(bin)).map((bin) => rows.columnOf(bin));
  const first = rows.initialColumns;
  if (!first) return undefined;
  const basis = new Basis(first, rows.demands);
  const smoothing = new DualSmoothing(rows);

  /** A new filling that improves the basis. Undefined where there is none, or the bound is reached. */
  const generate = (): FillingColumn | undefined | "undecided" => {
    const dualsToPrice = stopAt ? [smoothing.smooth(basis.duals), basis.duals] : [basis.duals];
    for (const duals of dualsToPrice) {
      const priced = priceOut(problem, rows.dualsBySize(duals), budget);
      if (priced === "undecided") return priced;
      smoothing.update(duals, priced?.gain ?? 1);
      if (stopAt && smoothing.bound >= stopAt.bound) return undefined;
      if (!priced) continue;
      const column = rows.columnOf(priced.bin);
      pool.push(priced.bin);
      known.push(column);
      if (basis.valueOf(column) > column.cost * (1 + TINY)) return column;
    }
    return undefined;
  };
  for (;;) {
    let column = bestPooled(basis, known) ?? exchangeColumn(basis.duals, withExchange);
    if (!column && !(stopAt && basis.cost <= stopAt.cost)) {
      const found = generate();
      if (found === "undecided") return undefined;
      column = found;
    }
    if (!column || !basis.enter(column)) break;
    if (!budget.take(rows.items.length)) return undefined;
  }
  const uses = basis.columns.flatMap(({ bin }, index) =>
    bin ? [{ bin, times: basis.amounts[index] ?? 0 }] : [],
  );
  return { uses, duals: rows.dualsBySize(smoothing.center) };
};
