import { Button } from "@fluentui/react-button";
import { useEffect, useRef } from "preact/hooks";
import type { Undo } from "../sheets/patch";

/** What came of a write, and how to take it back. */
export interface Outcome {
  readonly kind: "written" | "failed";
  readonly message: string;
  readonly undo?: Undo;
}

interface Props {
  readonly outcome: Outcome | undefined;
  /** For what can be taken back. */
  readonly onUndo?: (outcome: Outcome) => void;
  /** The keyboard goes on at Undo where the button that was pressed is gone. */
  readonly takesFocus?: boolean;
}

/** Says what was written, and offers to take it back. */
export const OutcomeLine = ({ outcome, onUndo, takesFocus = false }: Props) => {
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (takesFocus && outcome?.undo) button.current?.focus();
  }, [outcome, takesFocus]);
  return (
    <>
      <p role="status" class={`outcome ${outcome?.kind ?? ""}`}>
        {outcome?.message}
      </p>
      {outcome?.undo && onUndo && (
        <Button
          ref={button}
          onClick={() => {
            onUndo(outcome);
          }}
        >
          Undo
        </Button>
      )}
    </>
  );
};
