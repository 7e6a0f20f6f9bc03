import { Button } from "@fluentui/react-button";
import { useEffect, useRef } from "preact/hooks";
import type { Outcome } from "./useOutcome";

interface Props {
  readonly outcome: Outcome | undefined;
  /** For what can be taken back. */
  readonly onUndo?: () => Promise<void>;
  /** The keyboard goes on at Undo where the button that was pressed is gone. */
  readonly takesFocus?: boolean;
}

/** Says what was written, and offers to take it back. */
export const OutcomeLine = ({ outcome, onUndo, takesFocus = false }: Props) => {
  const line = useRef<HTMLParagraphElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  const isUndone = useRef(false);
  useEffect(() => {
    if (takesFocus && outcome?.takeBack) button.current?.focus();
    // Undo is gone once it has done its work: the keyboard goes on where that is said.
    else if (isUndone.current) line.current?.focus();
    isUndone.current = false;
  }, [outcome, takesFocus]);
  return (
    <>
      <p role="status" tabIndex={-1} ref={line} class={`outcome ${outcome?.kind ?? ""}`}>
        {outcome?.message}
      </p>
      {outcome?.takeBack && onUndo && (
        <Button
          ref={button}
          onClick={() => {
            isUndone.current = true;
            void onUndo();
          }}
        >
          Undo
        </Button>
      )}
    </>
  );
};
