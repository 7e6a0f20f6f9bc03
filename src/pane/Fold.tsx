import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";

interface Props {
  readonly title: string;
  /** What is in it. */
  readonly summary: string;
  readonly children: (isOpen: boolean) => ComponentChildren;
}

/** Cards that are needed on some days only, folded away under a line that opens them. What was begun in them stays. */
export const Fold = ({ title, summary, children }: Props) => {
  const [isOpen, setIsOpen] = useState(false);
  const [wasOpened, setWasOpened] = useState(false);
  return (
    <details
      class="fold"
      onToggle={({ currentTarget: { open } }) => {
        setIsOpen(open);
        setWasOpened((before) => before || open);
      }}
    >
      <summary>
        <strong>{title}</strong> <span class="hint">{summary}</span>
      </summary>
      {wasOpened && (
        <div class="place" tabIndex={-1}>
          {children(isOpen)}
        </div>
      )}
    </details>
  );
};
