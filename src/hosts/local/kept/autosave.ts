/** What autosave needs: when the workbook changes, and how to keep it. */
interface Autosaved {
  /** Calls back when the workbook was edited, undone or redone. */
  readonly onEdited: (listener: () => void) => () => void;
  /** Keeps the workbook as it is now. */
  readonly keep: () => Promise<void>;
}

export interface Autosave {
  /** Keeps what isn't kept yet, at once. */
  flush(): Promise<void>;
  /** Forgets the change that waits, because another workbook is about to be shown. */
  stop(): void;
}

/** A state is kept at most this long after a change, and then takes a fraction of a second to write. */
export const DELAY_MS = 1_000;

/** What takes longer to keep is a large workbook, which holds up typing meanwhile. */
const LONG_MS = 3_000;
/** A large workbook is being kept no more than this share of the time. */
const LARGEST_SHARE = 1 / 5;

/** Keeps the workbook soon after each change. While it is edited on and on, it is kept again and again, not only at the end. */
export const autosave = ({ onEdited, keep }: Autosaved): Autosave => {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let writing: Promise<void> | undefined;
  let isChangedMeanwhile = false;
  let isStopped = false;
  let delayMs = DELAY_MS;

  const schedule = (): void => {
    timer ??= setTimeout(() => void write(), delayMs);
  };
  const write = async (): Promise<void> => {
    clearTimeout(timer);
    timer = undefined;
    const startMs = performance.now();
    writing = keep().finally(() => {
      writing = undefined;
      const tookMs = performance.now() - startMs;
      delayMs = tookMs < LONG_MS ? DELAY_MS : tookMs / LARGEST_SHARE;
      if (isChangedMeanwhile && !isStopped) schedule();
      isChangedMeanwhile = false;
    });
    await writing;
  };
  const stopListening = onEdited(() => {
    if (writing) isChangedMeanwhile = true;
    else schedule();
  });
  return {
    flush: async () => {
      await writing;
      if (timer !== undefined) await write();
    },
    stop: () => {
      isStopped = true;
      clearTimeout(timer);
      timer = undefined;
      stopListening();
    },
  };
};
