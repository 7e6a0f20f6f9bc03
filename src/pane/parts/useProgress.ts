import { useState } from "preact/hooks";
import type { ProgressMonitor } from "../../workbook/progressMonitor";

/** A running task: its label, the share that is done (0 to 1), and a way to cancel it. */
interface RunningTask {
  readonly label: string;
  readonly share: number;
  readonly onCancel: () => void;
}

interface ProgressState {
  readonly working: RunningTask | undefined;
  /** Runs a task with progress and a Cancel button. A canceled task fails with `canceledMessage`. */
  withProgress<Result>(
    label: string,
    canceledMessage: string,
    task: (run: ProgressMonitor) => Promise<Result>,
  ): Promise<Result>;
}

/** The progress of a card's long task. */
export const useProgress = (): ProgressState => {
  const [working, setWorking] = useState<RunningTask>();
  return {
    working,
    withProgress: async (label, canceledMessage, task) => {
      const stop = new AbortController();
      const onCancel = (): void => {
        stop.abort(new Error(canceledMessage));
      };
      const onProgress = (share: number): void => {
        setWorking({ label, share, onCancel });
      };
      onProgress(0);
      try {
        return await task({ onProgress, signal: stop.signal });
      } finally {
        setWorking(undefined);
      }
    },
  };
};
