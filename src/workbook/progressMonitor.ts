/** A work that may take long: it says how far it is, and leaves no trace where it is canceled. */
export interface ProgressMonitor {
  /** Called with the share that is done, from 0 to 1. */
  readonly onProgress: (share: number) => void;
  readonly signal: AbortSignal;
}

/** Nobody waits for it, and nobody cancels it. */
export const NO_MONITOR: ProgressMonitor = {
  onProgress: () => undefined,
  signal: new AbortController().signal,
};
