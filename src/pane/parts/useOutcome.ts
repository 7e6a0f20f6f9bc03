import { useState } from "preact/hooks";
import { errorMessage } from "../../workbook/errorMessage";
import { useOfWorkbook } from "./ofWorkbook";

/** How to take back what was done, and what is said then. */
export interface TakeBack {
  readonly run: () => Promise<void>;
  readonly said: string;
}

/** What came of an action, in a sentence, and how to take it back. */
export interface Outcome {
  readonly kind: "written" | "failed";
  readonly message: string;
  /** What a person should look into, though it was done. */
  readonly warning?: string;
  readonly takeBack?: TakeBack;
}

/** What came of an action that did what it was to do. */
export type Done = Omit<Outcome, "kind">;

interface Attempts {
  readonly isBusy: boolean;
  readonly outcome: Outcome | undefined;
  /** What fails is said, and what was done before can be taken back still; what comes of nothing yet says nothing. */
  attempt(act: () => Promise<Done | undefined>): Promise<void>;
  /** Takes back what was done; where that fails, it can be tried again. */
  undo(): Promise<void>;
  /** For another action than the one that the outcome is about. */
  forget(): void;
}

/** Something that a card does at a button's press, one at a time, and what came of it. */
export const useOutcome = (): Attempts => {
  const [isBusy, setIsBusy] = useState(false);
  const [outcome, setOutcome] = useOfWorkbook<Outcome>();

  const go = async (
    act: () => Promise<Done | undefined>,
    onFailure: (sentence: string) => Outcome,
  ): Promise<void> => {
    // The button that was pressed isn't disabled meanwhile, so that it keeps the keyboard.
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
      const takeBack = outcome?.takeBack;
      if (!isBusy) setOutcome(undefined);
      return go(act, (sentence) =>
        takeBack
          ? { kind: "failed", message: `${sentence} You can still undo the last change.`, takeBack }
          : { kind: "failed", message: sentence },
      );
    },
    undo: () =>
      go(
        async () => {
          await outcome?.takeBack?.run();
          return { message: outcome?.takeBack?.said ?? "" };
        },
        (message) => ({ ...outcome, kind: "failed", message }),
      ),
    forget: () => {
      setOutcome(undefined);
    },
  };
};

/** What a person may have overlooked, a line each, apart from what was done. */
export const cautionOf = (remarks: readonly string[] = []): Pick<Done, "warning"> =>
  remarks.length === 0 ? {} : { warning: remarks.join("\n") };

/** Takes away sheets that were added. */
export const sheetsAway = (undo: () => Promise<void>): TakeBack => ({
  run: undo,
  said: "Undone: the sheets were removed. Nothing else was changed.",
});

export const listedSheets = (sheets: readonly string[]): string =>
  new Intl.ListFormat("en").format(sheets.map((name) => `"${name}"`));
