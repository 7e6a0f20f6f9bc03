import { useState } from "preact/hooks";
import { errorMessage } from "../../workbook/errorMessage";
import { useWorkbookState } from "./useWorkbookState";

/** How to undo an action, and the message to show then. */
export interface UndoAction {
  readonly run: () => Promise<void>;
  readonly said: string;
}

/** The message after an action, and how to undo it. */
export interface Outcome {
  readonly kind: "written" | "failed";
  readonly message: string;
  /** A problem to check, although the action succeeded. */
  readonly warning?: string;
  readonly undoAction?: UndoAction;
}

/** The outcome of an action that succeeded. */
export type Done = Omit<Outcome, "kind">;

interface Attempts {
  readonly isBusy: boolean;
  readonly outcome: Outcome | undefined;
  /** Runs an action and shows its message. If it fails, the previous action can still be undone. An action that returns undefined shows no message. */
  attempt(act: () => Promise<Done | undefined>): Promise<void>;
  /** Undoes the action. If that fails, it can be tried again. */
  undo(): Promise<void>;
  /** Clears the message, when it no longer fits what is shown. */
  forget(): void;
}

/** Runs a card's actions one at a time, and keeps the message of the last one. */
export const useOutcome = (): Attempts => {
  const [isBusy, setIsBusy] = useState(false);
  const [outcome, setOutcome] = useWorkbookState<Outcome>();

  const go = async (
    act: () => Promise<Done | undefined>,
    onFailure: (sentence: string) => Outcome,
  ): Promise<void> => {
    // The button isn't disabled while busy, so that it keeps the focus.
    if (isBusy) return;
    setIsBusy(true);
    try {
      const done = await act();
      setOutcome(done && { ...done, kind: "written" });
    } catch (failure) {
      setOutcome(onFailure(errorMessage(failure)));
    } finally {
      setIsBusy(false);
    }
  };

  return {
    isBusy,
    outcome,
    attempt: (act) => {
      const undoAction = outcome?.undoAction;
      if (!isBusy) setOutcome(undefined);
      return go(act, (sentence) =>
        undoAction
          ? { kind: "failed", message: `${sentence} You can still undo the last change.`, undoAction }
          : { kind: "failed", message: sentence },
      );
    },
    undo: () =>
      go(
        async () => {
          await outcome?.undoAction?.run();
          return { message: outcome?.undoAction?.said ?? "" };
        },
        (message) => ({ ...outcome, kind: "failed", message }),
      ),
    forget: () => {
      setOutcome(undefined);
    },
  };
};

/** Warnings, one per line, apart from the message. */
export const warningOf = (remarks: readonly string[] = []): Pick<Done, "warning"> =>
  remarks.length === 0 ? {} : { warning: remarks.join("\n") };

/** Undo for added sheets. */
export const undoAddedSheets = (undo: () => Promise<void>): UndoAction => ({
  run: undo,
  said: "Undone: the sheets were removed. Nothing else was changed.",
});

export const listedSheets = (sheets: readonly string[]): string =>
  new Intl.ListFormat("en").format(sheets.map((name) => `"${name}"`));
