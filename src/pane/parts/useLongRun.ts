import { useState } from "preact/hooks";
import type { ProgressMonitor } from "../../workbook/progressMonitor";

/** A work that goes on: what is done, the share of it that is, and the way to stop it. */
interface Working {
  readonly words: string;
  readonly share: number;
  readonly onCancel: () => void;
}

interface LongRuns {
  readonly working: Working | undefined;
  /** Shows how far a work is, and lets it be canceled, with the words that are said then. */
  watched<Result>(
    words: string,
    whenCanceled: string,
    work: (run: ProgressMonitor) => Promise<Result>,
  ): Promise<Result>;
}

/** A work that a card shows while it goes on. */
export const useLongRun = (): LongRuns => {
  const [working, setWorking] = useState<Working>();
  return {
    working,
    watched: async (words, whenCanceled, work) => {
      const stop = new AbortController();
      const onCancel = (): void => {
        stop.abort(new Error(whenCanceled));
      };
      const onProgress = (share: number): void => {
        setWorking({ words, share, onCancel });
      };
      onProgress(0);
      try {
        return await work({ onProgress, signal: stop.signal });
      } finally {
        setWorking(undefined);
      }
    },
  };
};
