import { Button } from "@fluentui/react-button";
import { useEffect, useRef } from "preact/hooks";
import type { Outcome } from "./useOutcome";

interface Props {
  readonly outcome: Outcome | undefined;
  /** Called by Undo, for an action that can be undone. */
  readonly onUndo?: () => Promise<void>;
}

/** True if the focused button disappeared. Focus on the sheet, where someone may be typing, is left alone. */
const isFocusLost = (): boolean => document.hasFocus() && document.activeElement === document.body;

/** The message after an action, with an Undo button if it can be undone. */
export const OutcomeLine = ({ outcome, onUndo }: Props) => {
  const line = useRef<HTMLParagraphElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    // An action without a message, such as reading a block, shows its result elsewhere in the card.
    if (outcome?.message) line.current?.scrollIntoView({ block: "nearest" });
    if (outcome && isFocusLost()) (button.current ?? line.current)?.focus();
  }, [outcome]);
  return (
    <>
      {outcome?.warning && (
        <p role="alert" class="outcome caution">
          {outcome.warning}
        </p>
      )}
      <p role="status" tabIndex={-1} ref={line} class={`outcome ${outcome?.kind ?? ""}`}>
        {outcome?.message}
      </p>
      {outcome?.undoAction && onUndo && (
        <Button ref={button} onClick={() => void onUndo()}>
          Undo
        </Button>
      )}
    </>
  );
};
