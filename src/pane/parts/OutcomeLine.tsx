import { Button } from "@fluentui/react-button";
import { useEffect, useRef } from "preact/hooks";
import type { Outcome } from "./useOutcome";

interface Props {
  readonly outcome: Outcome | undefined;
  /** For what can be taken back. */
  readonly onUndo?: () => Promise<void>;
}

/** The button that was pressed is gone. A person who types on the sheet meanwhile has the keyboard there, and keeps it. */
const isKeyboardLost = (): boolean => document.hasFocus() && document.activeElement === document.body;

/** Says what was written, and offers to take it back. */
export const OutcomeLine = ({ outcome, onUndo }: Props) => {
  const line = useRef<HTMLParagraphElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    // What says nothing, such as a block that was read, leaves in view what has come of it.
    if (outcome?.message) line.current?.scrollIntoView({ block: "nearest" });
    if (outcome && isKeyboardLost()) (button.current ?? line.current)?.focus();
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
      {outcome?.takeBack && onUndo && (
        <Button ref={button} onClick={() => void onUndo()}>
          Undo
        </Button>
      )}
    </>
  );
};
