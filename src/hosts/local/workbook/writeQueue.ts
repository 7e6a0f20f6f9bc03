import { InputError } from "../../../../shared/inputError";
import type { Undo } from "../../../workbook/patch";

export interface WriteQueue {
  /** Takes note of something that is written, and of its Undo. */
  keep(work: Promise<Undo>): Promise<Undo>;
  /** Resolves when nothing is being written or taken back any more. */
  done(): Promise<void>;
  /** The workbook is gone: nothing can be taken back. */
  close(): void;
}

/** A half-written workbook is neither read nor saved: several cards of the pane may write, or take back, at the same time. */
export const createWriteQueue = (): WriteQueue => {
  let isClosed = false;
  let going: Promise<unknown> = Promise.resolve();
  const waitedFor = <Result>(work: Promise<Result>): Promise<Result> => {
    // What it comes to is let go: an Undo holds the cells that it would bring back.
    going = Promise.allSettled([going, work]).then(() => undefined);
    return work;
  };
  return {
    keep: async (work) => {
      const undo = await waitedFor(work);
      return async (run) => {
        if (isClosed)
          throw new InputError("That was in a workbook that isn't open here any more. Nothing was undone.");
        await waitedFor(undo(run));
      };
    },
    done: async () => {
      for (let seen; seen !== going; await seen) seen = going;
    },
    close: () => {
      isClosed = true;
    },
  };
};
