import { InputError } from "../../../../shared/inputError";
import type { Undo } from "../../../workbook/patch";

export interface WriteQueue {
  /** Adds a write that has begun, and later its Undo. */
  add(write: Promise<Undo>): Promise<Undo>;
  /** Resolves when nothing is being written or undone. */
  idle(): Promise<void>;
  /** The workbook is closed: nothing in it can be undone any more. */
  close(): void;
}

/**
 * Keeps track of the writes and Undos that are running, because several cards of the pane may write at the same time, and a
 * half-written workbook must not be read or saved.
 */
export const createWriteQueue = (): WriteQueue => {
  let isClosed = false;
  let running: Promise<unknown> = Promise.resolve();
  const track = <Result>(work: Promise<Result>): Promise<Result> => {
    // The result is dropped, because an Undo holds every cell that it would restore.
    running = Promise.allSettled([running, work]).then(() => undefined);
    return work;
  };
  return {
    add: async (write) => {
      const undo = await track(write);
      return async (run) => {
        if (isClosed) throw new InputError("That workbook is no longer open here. Nothing was undone.");
        await track(undo(run));
      };
    },
    idle: async () => {
      for (let seen; seen !== running; await seen) seen = running;
    },
    close: () => {
      isClosed = true;
    },
  };
};
