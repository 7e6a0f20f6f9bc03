import type { Rows } from "./fillingColumns";

/** Weight of the stability center against the duals of the basis: of the weights tried, this took the fewest turns. */
const CENTER_WEIGHT = 0.5;

/**
 * Stabilizes column generation by smoothing the duals (Wentges 1997, from memory). The duals of the basis jump from turn
 * to turn; pricing at a point between them and the stability center finds better fillings. The center is the dual
 * feasible solution with the best bound so far, starting with duals by length.
 */
export class DualSmoothing {
  center: Float64Array;
  bound: number;
  private readonly demands: readonly number[];

  constructor(rows: Rows) {
    this.demands = rows.demands;
    this.center = Float64Array.from(rows.dualsByLength);
    this.bound = this.costOfAll(this.center);
  }

  smooth(duals: Float64Array): Float64Array {
    return duals.map((dual, row) => dual + CENTER_WEIGHT * ((this.center[row] ?? 0) - dual));
  }

  /** Moves the center to better duals. Under `duals`, no filling has more than `gain` times its cost as its value. */
  update(duals: Float64Array, gain: number): void {
    const bound = this.costOfAll(duals) / gain;
    if (bound <= this.bound) return;
    this.bound = bound;
    this.center = duals.map((dual) => dual / gain);
  }

  private costOfAll(duals: Float64Array): number {
    return duals.reduce((sum, dual, row) => sum + dual * (this.demands[row] ?? 0), 0);
  }
}
