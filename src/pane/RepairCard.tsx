import { Button } from "@fluentui/react-button";
import { counted } from "../../shared/describe";
import type { Host, Repaired } from "../workbook/host";
import { OutcomeLine } from "./parts/OutcomeLine";
import { Progress } from "./parts/Progress";
import { useLongRun } from "./parts/useLongRun";
import { useOutcome } from "./parts/useOutcome";

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
  const { isBusy, outcome, attempt, undo } = useOutcome();
  const { working, watched } = useLongRun();

  const run = (): Promise<void> =>
    attempt(async () => {
      const repaired = await watched(
        "Formulas looked for and entered",
        "Canceled: nothing was entered.",
        repair,
      );
      return {
        message: inWords(repaired),
        takeBack: repaired.undo && { run: repaired.undo, said: "Undone: the formulas are as they were." },
      };
    });

  return (
    <section class="card" aria-labelledby="repair-title">
      <h2 id="repair-title">Repair #NAME?</h2>
      <p>
        Enters formulas of Gablewright again that were left at #NAME? when the workbook was opened before it.
      </p>
      <Button appearance="primary" disabledFocusable={isBusy} onClick={() => void run()}>
        Repair the workbook
      </Button>
      {working && <Progress {...working} />}
      <OutcomeLine outcome={outcome} onUndo={undo} />
    </section>
  );
};
