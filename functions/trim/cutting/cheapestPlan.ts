import { Budget } from "./budget";
import { boundWith, choiceBound, costByLength, type RunChoices } from "./choiceBound";
import { planFor, type ChosenPlan, type MadeUp } from "./chosenPlan";
import type { Division } from "./divisions";
import type { Material } from "./material";

const STEPS_IN_ALL = 2_000_000;
/** Where runs can be made up in several ways, each way of all runs gets so many. */
const STEPS_A_WAY = 100_000;
const STEPS_A_NODE = 50;
/** A change of one run is tried quickly. */
const STEPS_A_CHANGE = 3000;
const MOST_WAYS = 300;

const least = <T>(items: readonly T[], valueOf: (item: T) => number): T =>
  items.reduce((a, b) => (valueOf(b) < valueOf(a) ? b : a));

/** Ways to begin with: each run as cheap as by length it could be, and with as much as may be of one stock. */
const firstWays = (material: Material, runs: readonly RunChoices[]): MadeUp[][] => {
  const wayBy = (valueOf: (division: Division) => number): MadeUp[] =>
    runs.map(({ run, choices }) => ({ run, division: least(choices, valueOf) }));
  return [
    wayBy((division) => costByLength(material, division)),
    ...material.stocks.map((_, preferred) =>
      wayBy(({ whole }) => -whole.filter((stock) => stock === preferred).length),
    ),
  ];
};

/** A search over the ways in which runs can be made up: the best plan so far, and whether no way was left out. */
class WaySearch {
  best: ChosenPlan | undefined;
  isWhole = true;
  private ways = 0;
  private readonly budget = new Budget(STEPS_IN_ALL);

  constructor(
    private readonly material: Material,
    private readonly bound: number,
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

/**
 * The cheapest plan of all ways to make up the runs, and the least that any could cost. Undefined where the limits
 * leave none, or none was found.
 */
export const cheapestPlan = (material: Material, runs: readonly RunChoices[]): ChosenPlan | undefined => {
  const ways = firstWays(material, runs);
  const isOneWay = runs.every(({ choices }) => choices.length === 1);
  if (isOneWay) return planFor(material, ways[0] ?? [], new Budget(STEPS_IN_ALL));
  const bound = choiceBound(material, runs);
  const search = new WaySearch(material, bound);
  for (const way of ways) search.try(way);
  search.improve(runs);
  search.searchAll([], runs);
  return (
    search.best && {
      ...search.best,
      bound: search.isWhole ? search.best.cost : Math.min(bound, search.best.cost),
    }
  );
};
