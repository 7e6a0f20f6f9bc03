/** What went wrong, as a sentence. */
export const failureInWords = (failure: unknown): string =>
  failure instanceof Error ? failure.message : String(failure);
