import { Button } from "@fluentui/react-button";
import type { ComponentChildren } from "preact";
import type { Added } from "../../workbook/host";
import { OutcomeLine } from "./OutcomeLine";
import { warningOf, listedSheets, undoAddedSheets, useOutcome } from "./useOutcome";

interface Props {
  readonly id: string;
  readonly title: string;
  readonly summary: string;
  /** The button's label. */
  readonly action: string;
  /** Adds the sheets and returns their names. */
  readonly build: () => Promise<Added>;
  /** Choices above the button. */
  readonly children?: ComponentChildren;
  /** Further actions, below the message. */
  readonly after?: ComponentChildren;
}

/** A card that builds sheets from a template: its purpose, choices, button, and message. */
export const BuildCard = ({ id, title, summary, action, build, children, after }: Props) => {
  const { isBusy, outcome, attempt, undo } = useOutcome();

  const run = (): Promise<void> =>
    attempt(async () => {
      const added = await build();
      return {
        message: `Added ${listedSheets(added.sheets)}. No other sheet was changed.`,
        ...warningOf(added.remarks),
        undoAction: undoAddedSheets(added.undo),
      };
    });

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
        <Button appearance="primary" type="submit" disabledFocusable={isBusy}>
          {isBusy ? "Working…" : action}
        </Button>
      </form>
      <OutcomeLine outcome={outcome} onUndo={undo} />
      {after}
    </section>
  );
};
