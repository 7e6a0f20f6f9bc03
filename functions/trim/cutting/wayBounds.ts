import { boundByPieces, boundByStock, choiceBound, type RunChoices } from "./choiceBound";
import type { MadeUp } from "./chosenPlan";
import type { Material } from "./material";
import { costByLength, type PieceCost } from "./pieceCost";

/** What no plan costs less than, of all ways to make up the runs or of some. */
export class WayBounds {
  /** Of all ways. */
  least: number;
  private readonly pieceCosts: PieceCost[] = [];

  constructor(
    private readonly material: Material,
    private readonly runs: readonly RunChoices[],
  ) {
    this.least = choiceBound(material, runs);
    this.learn(costByLength(material));
  }

  /** Takes one more cost of pieces into account; it bounds all plans only where every way is known. */
  learn(pieceCost: PieceCost): void {
    this.pieceCosts.push(pieceCost);
    if (this.runs.every(({ isComplete }) => isComplete))
      this.least = Math.max(this.least, boundByPieces(this.material, [], this.runs, pieceCost));
  }

  /** Of the ways in which some runs are made up so. */
  leastWith(madeUp: readonly MadeUp[], rest: readonly RunChoices[]): number {
    const byPieces = this.pieceCosts.map((pieceCost) =>
      boundByPieces(this.material, madeUp, rest, pieceCost),
    );
    return Math.max(...byPieces, boundByStock(this.material, madeUp, rest));
  }
}
