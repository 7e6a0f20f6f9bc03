import type { Budget } from "./budget";
import { boundWith, type RunChoices } from "./choiceBound";
import { planFor, type ChosenPlan, type MadeUp } from "./chosenPlan";
import type { Material } from "./material";

/** Where runs can be made up in several ways, each way of all runs gets so many. */
const STEPS_A_WAY = 100_000;
const STEPS_A_NODE = 50;
/** A change of one run is tried quickly. */
const STEPS_A_CHANGE = 3000;
const MOST_WAYS = 300;

/** A search over the ways in which runs can be made up: the best plan so far, and whether no way was left out. */
export class WaySearch {
  best: ChosenPlan | undefined;
  isWhole = true;
  private ways = 0;

  constructor(
    private readonly material: Material,
    private readonly bound: number,
    private readonly budget: Budget,
  ) {}

  private get isDone(): boolean {
    return this.best !== undefined && this.best.cost <= this.bound;
  }

  private get cost(): number {
    return this.best?.cost ?? Infinity;
  }

  try(madeUp: readonly MadeUp[], steps = STEPS_A_WAY): ChosenPlan | undefined {
    if (this.isDone || boundWith(this.material, madeUp, []) >= this.cost) return undefined;
    const plan = this.budget.lend(steps, (part) => planFor(this.material, madeUp, part));
    if (plan && plan.cost < this.cost) this.best = plan;
    return plan;
  }

  /** Makes up one run at a time otherwise, as long as that is cheaper. */
  improve(runs: readonly RunChoices[]): void {
    for (let before = Infinity; this.best && this.cost < before && !this.budget.isSpent;) {
      before = this.cost;
      for (const { run, choices } of runs)
        for (const division of choices) {
          const changed: MadeUp[] = this.best.madeUp.map((each) =>
            each.run === run ? { run, division } : each,
          );
          this.try(changed, STEPS_A_CHANGE);
        }
    }
  }

  /** Every way; runs that are alike stand together and take their choices in order, as any other order is the same. */
  searchAll(madeUp: readonly MadeUp[], rest: readonly RunChoices[], from = 0): void {
    if (this.isDone) return;
    if (this.ways >= MOST_WAYS || !this.budget.take(STEPS_A_NODE)) this.isWhole = false;
    if (!this.isWhole || boundWith(this.material, madeUp, rest) >= this.cost) return;
    const [next, ...others] = rest;
    if (!next) {
      this.ways += 1;
      const plan = this.try(madeUp);
      if (!plan || plan.bound < Math.min(plan.cost, this.cost)) this.isWhole = false;
      return;
    }
    next.choices.forEach((division, index) => {
      const isAlike = others[0]?.choices === next.choices;
      if (index >= from)
        this.searchAll([...madeUp, { run: next.run, division }], others, isAlike ? index : 0);
    });
  }
}
