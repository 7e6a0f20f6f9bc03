/** An amount may be a credit. The bounds are far above any job and far below where cents stop being exact. */
const LARGEST_AMOUNT = 1e9;

export const CREDIT_OR_CHARGE = { atLeast: -LARGEST_AMOUNT, atMost: LARGEST_AMOUNT } as const;
