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
 * The places of the pane, one at a time, as the ARIA Authoring Practices describe tabs: arrow keys go between them. A place
 * is made when it is first shown; what was begun in it is still there when a person comes back.
 */
export const Places = ({ tabs }: { tabs: readonly PaneTab[] }) => {
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
        aria-label="Places"
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
