import { Button } from "@fluentui/react-button";
import { useState } from "preact/hooks";
import { counted } from "../../shared/describe";
import { failureInWords } from "../failureInWords";
import type { Host, Repaired } from "../hosts/host";

const inWords = ({ entered, stillUnknown, protectedSheets }: Repaired): string => {
  const sentences = [
    entered === 0
      ? "No cell of ours was left at #NAME?."
      : `Entered ${counted(entered, "cell")} again; ${stillUnknown === 0 ? "none shows" : `${stillUnknown} still ${stillUnknown === 1 ? "shows" : "show"}`} #NAME?.`,
    ...(protectedSheets.length > 0
      ? [`Left alone, because protected: ${new Intl.ListFormat("en").format(protectedSheets)}.`]
      : []),
  ];
  return sentences.join(" ");
};

/** For a workbook that was opened before the functions were there. */
export const RepairCard = ({ repair }: { repair: NonNullable<Host["repair"]> }) => {
  const [outcome, setOutcome] = useState<{ kind: "written" | "failed"; message: string }>();
  const run = async (): Promise<void> => {
    try {
      setOutcome({ kind: "written", message: inWords(await repair()) });
    } catch (failure) {
      setOutcome({ kind: "failed", message: failureInWords(failure) });
    }
  };
  return (
    <section class="card" aria-labelledby="repair-title">
      <h2 id="repair-title">Repair #NAME?</h2>
      <p>
        Enters formulas of Gablewright again that were left at #NAME? when the workbook was opened before it.
      </p>
      <Button appearance="primary" onClick={() => void run()}>
        Repair the workbook
      </Button>
      <p role="status" class={`outcome ${outcome?.kind ?? ""}`}>
        {outcome?.message}
      </p>
    </section>
  );
};
