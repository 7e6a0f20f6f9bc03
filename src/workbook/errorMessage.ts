/** What the bundler calls a script that didn't come; its own message is for programmers. */
const SCRIPT_MISSING = "ChunkLoadError";

/** What went wrong, as a sentence. */
export const errorMessage = (failure: unknown): string => {
  if (!(failure instanceof Error)) return String(failure);
  return failure.name === SCRIPT_MISSING
    ? "It didn't come over the network: look at the connection, and try again."
    : failure.message;
};
