import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";

interface Props {
  readonly title: string;
  /** What the section contains, shown next to the title. */
  readonly summary: string;
  readonly children: (isOpen: boolean) => ComponentChildren;
}

/** A collapsible section for cards that are needed rarely. They keep their state when it is closed. */
export const CollapsibleSection = ({ title, summary, children }: Props) => {
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
