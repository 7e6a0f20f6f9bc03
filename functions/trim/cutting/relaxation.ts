import { Basis } from "./basis";
import type { Budget } from "./budget";
import { Rows, type FillingColumn } from "./fillingColumns";
import type { Bin, Problem } from "./packingProblem";
import { SteadyWorths } from "./dualSmoothing";
import { worthiestFilling } from "./bestFilling";

/** How often each way of filling a stock is used, where it may be used a broken number of times. */
export interface Relaxation {
  readonly uses: readonly { readonly bin: Bin; readonly times: number }[];
  /** What a piece of each size is worth to the plan. */
  readonly worths: readonly number[];
}

/** When a relaxation that is asked for a bound may end early. */
export interface Aim {
  /** A bound so high is enough. */
  readonly bound: number;
  /** Once it costs no more than this, no bound of use can come of it. */
  readonly cost: number;
}

const TINY = 1e-9;

/** The known filling that the worths pay best for. */
const bestKnown = (basis: Basis<FillingColumn>, known: readonly FillingColumn[]) => {
  let [best, bestGain]: [FillingColumn | undefined, number] = [undefined, 1 + TINY];
  for (const column of known) {
    const gain = basis.worthOf(column) / column.cost;
    if (gain > bestGain) [best, bestGain] = [column, gain];
  }
  return best;
};

/** A filling, and how many times its cost it is worth. */
interface Paid {
  readonly bin: Bin;
  readonly gain: number;
}

/** The filling of all that the worths pay best for; undefined where they pay for none. */
const bestNew = (
  problem: Problem,
  worths: readonly number[],
  budget: Budget,
): Paid | undefined | "undecided" => {
  let best: Paid | undefined;
  for (const [stock, { capacity, cost, limit }] of problem.stocks.entries()) {
    if (limit <= 0) continue;
    const found = worthiestFilling(problem, worths, capacity, cost * (1 + TINY), budget);
    if (found === "undecided") return found;
    const gain = found ? found.worth / cost : 0;
    if (found && gain > (best?.gain ?? 0)) best = { bin: { stock, items: found.items }, gain };
  }
  return best;
};

/** A piece that is worth less than the next smaller one, or than nothing, may as well be cut down to that. */
const cutDown = (worths: Float64Array, mayReplace: boolean): FillingColumn | undefined => {
  let most = 0;
  for (const worth of worths) if (worth > most) most = worth;
  let [row, least] = [-1, -TINY * most];
  for (let index = 0; index < worths.length; index++) {
    const gap = (worths[index] ?? 0) - (mayReplace ? (worths[index + 1] ?? 0) : 0);
    if (gap < least) [row, least] = [index, gap];
  }
  if (row < 0) return undefined;
  const isReplaced = mayReplace && row + 1 < worths.length;
  return isReplaced
    ? { cost: 0, rows: [row, row + 1], times: [-1, 1] }
    : { cost: 0, rows: [row], times: [-1] };
};

/**
 * Least cost with broken numbers of fillings, by column generation: the filling comes in that the present worths of
 * the pieces pay best for (Gilmore and Gomory 1961, from memory). `pool` keeps the fillings for the next time. Where
 * a piece may be replaced by a smaller one (Valério de Carvalho 2005, from memory) it ends sooner, but a filling may
 * then hold pieces that are cut down. Steady worths reach a bound sooner, but leave worse fillings to dive from: they
 * serve where there is an aim. Undefined where the budget ends. Floating point proves nothing: `worthBound`
 * does.
 */
export const relax = (
  problem: Problem,
  pool: Bin[],
  mayReplace: boolean,
  budget: Budget,
  aim?: Aim,
): Relaxation | undefined => {
  const rows = new Rows(problem);
  const known = pool.filter((bin) => rows.isThere(bin)).map((bin) => rows.columnOf(bin));
  const first = rows.firstColumns;
  if (!first) return undefined;
  const basis = new Basis(first, rows.demands);
  const steady = new SteadyWorths(rows);

  /** A new filling that the basis pays for. Undefined where there is none, or no need of one. */
  const generate = (): FillingColumn | undefined | "undecided" => {
    const several = aim ? [steady.between(basis.worths), basis.worths] : [basis.worths];
    for (const worths of several) {
      const paid = bestNew(problem, rows.worthsOfSizes(worths), budget);
      if (paid === "undecided") return paid;
      steady.learn(worths, paid?.gain ?? 1);
      if (aim && steady.bound >= aim.bound) return undefined;
      if (!paid) continue;
      const column = rows.columnOf(paid.bin);
      pool.push(paid.bin);
      known.push(column);
      if (basis.worthOf(column) > column.cost * (1 + TINY)) return column;
    }
    return undefined;
  };
  for (;;) {
    let column = bestKnown(basis, known) ?? cutDown(basis.worths, mayReplace);
    if (!column && !(aim && basis.cost <= aim.cost)) {
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
  return { uses, worths: rows.worthsOfSizes(steady.worths) };
};
