import type { Budget } from "./budget";
import type { SplitOptions } from "./splitCosts";
import { planForSplits, type SplitPlan, type ChosenSplit } from "./splitPlan";
import type { Material } from "./material";
import { costByDuals } from "./pieceCost";
import { SplitBounds } from "./splitBounds";

/** For packing one choice of splits for all runs. */
const STEPS_PER_PLAN = 8_000;
/** For packing after a change in one run. */
const STEPS_PER_CHANGE = 1000;
/** For finding the duals of the pieces. */
const STEPS_FOR_DUALS = 8_000;
/** Charged for each run when bounds are calculated or a plan is started. */
const STEPS_PER_RUN = 40;

/** A branch-and-bound search over the splits of the runs. It keeps the best plan found, and knows whether it tried all. */
export class SplitSearch {
  best: SplitPlan | undefined;
  private isExhaustive: boolean;
  private readonly bounds: SplitBounds;

  constructor(
    private readonly material: Material,
    private readonly runs: readonly SplitOptions[],
    private readonly budget: Budget,
  ) {
    this.isExhaustive = runs.every(({ isComplete }) => isComplete);
    this.bounds = new SplitBounds(material, runs);
  }

  /** The best plan found, with its proved bound. */
  get found(): SplitPlan | undefined {
    if (!this.best) return undefined;
    return { ...this.best, bound: this.isExhaustive ? this.cost : Math.min(this.bounds.least, this.cost) };
  }

  private get isDone(): boolean {
    return this.cost <= this.bounds.least;
  }

  private get cost(): number {
    return this.best?.cost ?? Infinity;
  }

  try(chosen: readonly ChosenSplit[], steps = STEPS_PER_PLAN): SplitPlan | undefined {
    this.budget.take(STEPS_PER_RUN * this.runs.length);
    if (this.isDone || this.bounds.leastWith(chosen, []) >= this.cost) return undefined;
    this.budget.take(STEPS_PER_RUN * this.runs.length);
    const plan = this.budget.lend(steps, (part) => planForSplits(this.material, chosen, part));
    if (plan && plan.cost < this.cost) this.best = plan;
    return plan;
  }

  /** Finds the duals of the pieces in the best plan: they bound better than length does. */
  learnDuals(): void {
    const { best, material, budget } = this;
    if (!best || this.isDone) return;
    const learned = budget.lend(STEPS_FOR_DUALS, (part) => costByDuals(material, best, part));
    if (learned) this.bounds.learn(learned);
  }

  /** Local search: changes the split of one run at a time as long as that lowers the cost. */
  improve(): void {
    for (let before = Infinity; this.best && this.cost < before && !this.budget.isSpent;) {
      before = this.cost;
      for (const { run, splits } of this.runs)
        for (const split of splits) {
          if (this.isDone || this.budget.isSpent) return;
          const changed: ChosenSplit[] = this.best.chosen.map((each) =>
            each.run === run ? { run, split } : each,
          );
          this.try(changed, STEPS_PER_CHANGE);
        }
    }
  }

  /** Tries all splits. Runs of the same length are adjacent and take their splits in order, since any other order is equivalent. */
  searchAll(chosen: readonly ChosenSplit[] = [], rest = this.runs, from = 0): void {
    if (this.isDone) return;
    if (!this.budget.take(STEPS_PER_RUN * this.runs.length)) {
      this.isExhaustive = false;
      return;
    }
    if (this.bounds.leastWith(chosen, rest) >= this.cost) return;
    const [next, ...others] = rest;
    if (!next) {
      const plan = this.try(chosen);
      if (!plan || plan.bound < Math.min(plan.cost, this.cost)) this.isExhaustive = false;
      return;
    }
    next.splits.forEach((split, index) => {
      const isAlike = others[0]?.splits === next.splits;
      if (index >= from) this.searchAll([...chosen, { run: next.run, split }], others, isAlike ? index : 0);
    });
  }
}
