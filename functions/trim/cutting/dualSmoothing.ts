import type { Rows } from "./fillingColumns";

/** How much of the steady worths is mixed into those of the basis: of the parts tried, this took the fewest turns. */
const STEADY_PART = 0.5;

/**
 * The worths of the best bound so far, under which no filling is worth more than it costs. The worths of a basis leap
 * from turn to turn; between them and the steady ones lie better fillings (Wentges 1997, from memory). It begins with
 * worths by length.
 */
export class SteadyWorths {
  worths: Float64Array;
  bound: number;
  private readonly demands: readonly number[];

  constructor(rows: Rows) {
    this.demands = rows.demands;
    this.worths = Float64Array.from(rows.worthsByLength);
    this.bound = this.costOfAll(this.worths);
  }

  between(worths: Float64Array): Float64Array {
    return worths.map((worth, row) => worth + STEADY_PART * ((this.worths[row] ?? 0) - worth));
  }

  /** Takes worths into account under which a filling is worth at most `gain` times its cost. */
  learn(worths: Float64Array, gain: number): void {
    const bound = this.costOfAll(worths) / gain;
    if (bound <= this.bound) return;
    this.bound = bound;
    this.worths = worths.map((worth) => worth / gain);
  }

  private costOfAll(worths: Float64Array): number {
    return worths.reduce((sum, worth, row) => sum + worth * (this.demands[row] ?? 0), 0);
  }
}
