import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { failureInWords } from "../failureInWords";
import type { Added } from "../hosts/host";
import { OutcomeLine, type Outcome } from "./OutcomeLine";

interface Props {
  readonly id: string;
  readonly title: string;
  readonly summary: string;
  /** What the button says. */
  readonly action: string;
  /** Writes the sheets, and says which. */
  readonly build: () => Promise<Added>;
  /** Choices above the button. */
  readonly children?: ComponentChildren;
  /** What can be done with the outcome. */
  readonly after?: ComponentChildren;
}

const listed = (sheets: readonly string[]): string =>
  new Intl.ListFormat("en").format(sheets.map((name) => `"${name}"`));

/** A template's card: what it is for, its choices, the button, and what came of it. */
export const BuildCard = ({ id, title, summary, action, build, children, after }: Props) => {
  const [isBusy, setIsBusy] = useState(false);
  const [outcome, setOutcome] = useState<Outcome>();

  const attempt = async (act: () => Promise<Outcome>, still: Partial<Outcome> = {}): Promise<void> => {
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

  const run = (): Promise<void> =>
    attempt(async () => {
      const { sheets, undo } = await build();
      return { kind: "written", message: `Added ${listed(sheets)}. No other sheet was changed.`, undo };
    });

  const takeAway = (built: Outcome): Promise<void> =>
    attempt(async () => {
      await built.undo?.();
      return { kind: "written", message: "Undone: the sheets are gone, and nothing else has changed." };
    }, built);

  return (
    <section class="card" aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>{title}</h2>
      <p>{summary}</p>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void run();
        }}
      >
        {children}
        <button type="submit" disabled={isBusy}>
          {isBusy ? "Working…" : action}
        </button>
      </form>
      <OutcomeLine outcome={outcome} onUndo={(built) => void takeAway(built)} />
      {after}
    </section>
  );
};
