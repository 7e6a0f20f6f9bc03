/** Follows and cancels a long task. A canceled task leaves no trace. */
export interface ProgressMonitor {
  /** Called with the fraction that is done, from 0 to 1. */
  readonly onProgress: (share: number) => void;
  readonly signal: AbortSignal;
}

/** For a task that shows no progress and can't be canceled. */
export const NO_MONITOR: ProgressMonitor = {
  onProgress: () => undefined,
  signal: new AbortController().signal,
};
