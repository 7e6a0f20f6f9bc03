import type { Budget } from "./budget";
import type { RunChoices } from "./choiceBound";
import { planFor, type ChosenPlan, type MadeUp } from "./chosenPlan";
import type { Material } from "./material";
import { costByWorth } from "./pieceCost";
import { WayBounds } from "./wayBounds";

/** Where runs can be made up in several ways, each way of all runs gets so many steps. */
const STEPS_A_WAY = 8_000;
/** A change of one run is tried quickly. */
const STEPS_A_CHANGE = 1000;
/** To find out what pieces are worth. */
const STEPS_FOR_WORTHS = 8_000;
/** Looking at a run counts so many, whether bounds are reckoned for it or a plan is begun. */
const STEPS_A_RUN = 40;

/** A search over the ways in which runs can be made up: the best plan so far, and whether no way was left out. */
export class WaySearch {
  best: ChosenPlan | undefined;
  private isWhole: boolean;
  private readonly bounds: WayBounds;

  constructor(
    private readonly material: Material,
    private readonly runs: readonly RunChoices[],
    private readonly budget: Budget,
  ) {
    this.isWhole = runs.every(({ isComplete }) => isComplete);
    this.bounds = new WayBounds(material, runs);
  }

  /** The best plan, with what is proved of it. */
  get found(): ChosenPlan | undefined {
    if (!this.best) return undefined;
    return { ...this.best, bound: this.isWhole ? this.cost : Math.min(this.bounds.least, this.cost) };
  }

  private get isDone(): boolean {
    return this.cost <= this.bounds.least;
  }

  private get cost(): number {
    return this.best?.cost ?? Infinity;
  }

  try(madeUp: readonly MadeUp[], steps = STEPS_A_WAY): ChosenPlan | undefined {
    this.budget.take(STEPS_A_RUN * this.runs.length);
    if (this.isDone || this.bounds.leastWith(madeUp, []) >= this.cost) return undefined;
    this.budget.take(STEPS_A_RUN * this.runs.length);
    const plan = this.budget.lend(steps, (part) => planFor(this.material, madeUp, part));
    if (plan && plan.cost < this.cost) this.best = plan;
    return plan;
  }

  /** Finds out what pieces are worth to the best plan: that bounds better than their length. */
  learnWorths(): void {
    const { best, material, budget } = this;
    if (!best || this.isDone) return;
    const learned = budget.lend(STEPS_FOR_WORTHS, (part) => costByWorth(material, best, part));
    if (learned) this.bounds.learn(learned);
  }

  /** Makes up one run at a time otherwise, as long as that is cheaper. */
  improve(): void {
    for (let before = Infinity; this.best && this.cost < before && !this.budget.isSpent;) {
      before = this.cost;
      for (const { run, choices } of this.runs)
        for (const division of choices) {
          if (this.isDone || this.budget.isSpent) return;
          const changed: MadeUp[] = this.best.madeUp.map((each) =>
            each.run === run ? { run, division } : each,
          );
          this.try(changed, STEPS_A_CHANGE);
        }
    }
  }

  /** Every way; runs that are alike stand together and take their choices in order, as any other order is the same. */
  searchAll(madeUp: readonly MadeUp[] = [], rest = this.runs, from = 0): void {
    if (this.isDone) return;
    if (!this.budget.take(STEPS_A_RUN * this.runs.length)) {
      this.isWhole = false;
      return;
    }
    if (this.bounds.leastWith(madeUp, rest) >= this.cost) return;
    const [next, ...others] = rest;
    if (!next) {
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
