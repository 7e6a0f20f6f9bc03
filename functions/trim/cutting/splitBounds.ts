import { boundByPieces, boundByStock, boundOverSplits, type SplitOptions } from "./splitCosts";
import type { ChosenSplit } from "./splitPlan";
import type { Material } from "./material";
import { costByLength, type PieceCost } from "./pieceCost";

/** Lower bounds on the cost of plans over all splits of the runs, or over the splits that are still open. */
export class SplitBounds {
  /** Over all splits. */
  least: number;
  private readonly pieceCosts: PieceCost[] = [];

  constructor(
    private readonly material: Material,
    private readonly runs: readonly SplitOptions[],
  ) {
    this.least = boundOverSplits(material, runs);
    this.learn(costByLength(material));
  }

  /** Adds one more cost per piece. It bounds all plans only where every split is known. */
  learn(pieceCost: PieceCost): void {
    this.pieceCosts.push(pieceCost);
    if (this.runs.every(({ isComplete }) => isComplete))
      this.least = Math.max(this.least, boundByPieces(this.material, [], this.runs, pieceCost));
  }

  /** Over the plans with these splits chosen for some runs. */
  leastWith(chosen: readonly ChosenSplit[], rest: readonly SplitOptions[]): number {
    const byPieces = this.pieceCosts.map((pieceCost) =>
      boundByPieces(this.material, chosen, rest, pieceCost),
    );
    return Math.max(...byPieces, boundByStock(this.material, chosen, rest));
  }
}
