import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { failureInWords } from "../failureInWords";

type Outcome = { readonly kind: "written" | "failed"; readonly message: string };

interface Props {
  readonly id: string;
  readonly title: string;
  readonly summary: string;
  /** What the button says. */
  readonly action: string;
  /** Writes the sheets, and says which. */
  readonly build: () => Promise<readonly string[]>;
  /** Choices above the button. */
  readonly children?: ComponentChildren;
}

const listed = (sheets: readonly string[]): string =>
  new Intl.ListFormat("en").format(sheets.map((name) => `"${name}"`));

/** A template's card: what it is for, its choices, the button, and what came of it. */
export const BuildCard = ({ id, title, summary, action, build, children }: Props) => {
  const [isBuilding, setIsBuilding] = useState(false);
  const [outcome, setOutcome] = useState<Outcome>();

  const run = async (event: Event): Promise<void> => {
    event.preventDefault();
    setIsBuilding(true);
    setOutcome(undefined);
    try {
      setOutcome({ kind: "written", message: `Added ${listed(await build())}. No other sheet was changed.` });
    } catch (failure) {
      setOutcome({ kind: "failed", message: failureInWords(failure) });
    } finally {
      setIsBuilding(false);
    }
  };

  return (
    <section class="card" aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>{title}</h2>
      <p>{summary}</p>
      <form onSubmit={(event) => void run(event)}>
        {children}
        <button type="submit" disabled={isBuilding}>
          {isBuilding ? "Building…" : action}
        </button>
      </form>
      <p role="status" class={outcome ? `outcome ${outcome.kind}` : "outcome"}>
        {outcome?.message}
      </p>
    </section>
  );
};
