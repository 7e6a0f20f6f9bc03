import type { ComponentChildren } from "preact";
import { useRef, useState } from "preact/hooks";

export interface PaneTab {
  readonly id: string;
  readonly label: string;
  readonly content: (isShown: boolean) => ComponentChildren;
}

const stepOf = (key: string, at: number, last: number): number | undefined =>
  ({ ArrowRight: at === last ? 0 : at + 1, ArrowLeft: at === 0 ? last : at - 1, Home: 0, End: last })[key];

/**
 * The tabs of the pane, with the keyboard behavior of the ARIA Authoring Practices: arrow keys move between them. A tab's
 * content is created when it is first shown, and keeps its state when another tab is shown.
 */
export const PaneTabs = ({ tabs }: { tabs: readonly PaneTab[] }) => {
  const [shown, setShown] = useState(0);
  const [seen, setSeen] = useState<ReadonlySet<number>>(new Set([0]));
  const show = (index: number): void => {
    setShown(index);
    setSeen((before) => new Set([...before, index]));
  };
  const buttons = useRef<(HTMLButtonElement | null)[]>([]);
  return (
    <>
      <div
        class="places"
        role="tablist"
        aria-label="Gablewright tools"
        onKeyDown={(event) => {
          const next = stepOf(event.key, shown, tabs.length - 1);
          if (next === undefined) return;
          event.preventDefault();
          show(next);
          buttons.current[next]?.focus();
        }}
      >
        {tabs.map(({ id, label }, index) => (
          <button
            key={id}
            type="button"
            role="tab"
            id={`tab-${id}`}
            aria-controls={`place-${id}`}
            aria-selected={index === shown}
            tabIndex={index === shown ? 0 : -1}
            ref={(element) => {
              buttons.current[index] = element;
            }}
            onClick={() => {
              show(index);
            }}
          >
            {label}
          </button>
        ))}
      </div>
      {tabs.map(({ id, content }, index) => (
        <div
          key={id}
          class="place"
          role="tabpanel"
          id={`place-${id}`}
          aria-labelledby={`tab-${id}`}
          hidden={index !== shown}
          tabIndex={-1}
        >
          {seen.has(index) && content(index === shown)}
        </div>
      ))}
    </>
  );
};
