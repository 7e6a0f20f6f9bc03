/**
 * The steps that a search may still take. Searches count steps instead of reading the clock, so that the same runs give
 * the same plan on every machine.
 */
export class Budget {
  constructor(private steps: number) {}

  /** Takes steps; false where they are used up. */
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

  /** Lends part of these steps; unused steps come back. */
  lend<T>(steps: number, use: (part: Budget) => T): T {
    const lent = Math.min(steps, this.left);
    const part = new Budget(lent);
    const result = use(part);
    this.steps -= lent - part.left;
    return result;
  }
}
