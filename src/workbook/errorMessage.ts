/** The bundler's name for a script that failed to load. Its own message is for programmers. */
const SCRIPT_MISSING = "ChunkLoadError";

/** What went wrong, as a message for the user. */
export const errorMessage = (failure: unknown): string => {
  if (!(failure instanceof Error)) return String(failure);
  return failure.name === SCRIPT_MISSING
    ? "It didn't come over the network: look at the connection, and try again."
    : failure.message;
};
