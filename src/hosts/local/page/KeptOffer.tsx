import { render } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { timeAgo } from "../../../pane/parts/timeAgo";
import type { KeptState } from "../kept/keptState";

interface Props {
  readonly states: readonly KeptState[];
  readonly now: number;
  readonly onChoice: (state: KeptState | undefined) => void;
}

const KeptOffer = ({ states, now, onChoice }: Props) => {
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    title.current?.focus();
  }, []);
  return (
    <section class="kept-offer" aria-labelledby="kept-offer-title">
      <h2 id="kept-offer-title" tabIndex={-1} ref={title}>
        Pick up where you left off
      </h2>
      <p>These workbooks have changes that aren't saved to a file. This browser kept them.</p>
      <ul>
        {states.map((state) => (
          <li key={state.id}>
            <button type="button" onClick={() => onChoice(state)}>
              Open {state.name}
            </button>
            <span>{timeAgo(state.keptAt, now)}, not saved to a file</span>
          </li>
        ))}
      </ul>
      <button type="button" class="plain" onClick={() => onChoice(undefined)}>
        Start with the example
      </button>
      <p class="hint">All stay listed in the pane, under Sheets, until you delete them.</p>
    </section>
  );
};

/** Offers what was kept, in the grid's place; undefined if the user starts with the example. The pane waits until then. */
export const offerKept = (
  container: HTMLElement,
  pane: HTMLElement,
  states: readonly KeptState[],
  now: number,
): Promise<KeptState | undefined> =>
  new Promise((resolve) => {
    pane.inert = true;
    const onChoice = (state: KeptState | undefined): void => {
      render(null, container);
      pane.inert = false;
      resolve(state);
    };
    // With native buttons: the pane's library allows only one root of its own on a page.
    render(<KeptOffer states={states} now={now} onChoice={onChoice} />, container);
  });
