import { useState } from "preact/hooks";
import { failureInWords } from "../failureInWords";
import type { Outcome } from "./OutcomeLine";

interface Attempts {
  readonly isBusy: boolean;
  readonly outcome: Outcome | undefined;
  /** What fails is said, and what was said before is kept where it can still be undone. */
  attempt(act: () => Promise<Outcome>, still?: Partial<Outcome>): Promise<void>;
  /** Takes back the sheets that were added. */
  takeAway(added: Outcome): Promise<void>;
}

/** Something that a card does at a button's press, one at a time, and what came of it. */
export const useOutcome = (): Attempts => {
  const [isBusy, setIsBusy] = useState(false);
  const [outcome, setOutcome] = useState<Outcome>();

  const attempt: Attempts["attempt"] = async (act, still = {}) => {
    // The button that was pressed isn't disabled meanwhile, so that it keeps the keyboard.
    if (isBusy) return;
    setIsBusy(true);
    setOutcome(undefined);
    try {
      setOutcome(await act());
    } catch (failure) {
      setOutcome({ ...still, kind: "failed", message: failureInWords(failure) });
    } finally {
      setIsBusy(false);
    }
  };

  const takeAway = (added: Outcome): Promise<void> =>
    attempt(async () => {
      await added.undo?.();
      return { kind: "written", message: "Undone: the sheets are gone, and nothing else has changed." };
    }, added);

  return { isBusy, outcome, attempt, takeAway };
};

export const listedSheets = (sheets: readonly string[]): string =>
  new Intl.ListFormat("en").format(sheets.map((name) => `"${name}"`));
