/**
 * Steps that a search may still take. Steps are counted, never the clock asked, so that the same runs give the same
 * plan on every machine.
 */
export class Budget {
  constructor(private steps: number) {}

  /** Whether there was a step left to take. */
  take(steps = 1): boolean {
    this.steps -= steps;
    return this.steps >= 0;
  }

  get isSpent(): boolean {
    return this.steps <= 0;
  }

  get left(): number {
    return Math.max(0, this.steps);
  }

  /** Lets something use at most so many of these steps; what it doesn't use stays here. */
  lend<T>(steps: number, use: (part: Budget) => T): T {
    const lent = Math.min(steps, this.left);
    const part = new Budget(lent);
    const result = use(part);
    this.steps -= lent - part.left;
    return result;
  }
}
