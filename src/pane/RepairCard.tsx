import { Button } from "@fluentui/react-button";
import { counted } from "../../shared/describe";
import type { Host, Repaired } from "../workbook/host";
import { OutcomeLine } from "./parts/OutcomeLine";
import { Progress } from "./parts/Progress";
import { useProgress } from "./parts/useProgress";
import { useOutcome } from "./parts/useOutcome";

const inWords = ({ entered, stillUnknown, protectedSheets }: Repaired): string => {
  const sentences = [
    entered === 0
      ? "No Gablewright formula shows #NAME?."
      : `Re-entered ${counted(entered, "cell")}; ${stillUnknown === 0 ? "none shows #NAME? now" : `${stillUnknown} still ${stillUnknown === 1 ? "shows" : "show"} #NAME?`}.`,
    ...(protectedSheets.length > 0
      ? [`Skipped protected sheets: ${new Intl.ListFormat("en").format(protectedSheets)}.`]
      : []),
  ];
  return sentences.join(" ");
};

/** For a workbook that was opened before the add-in, so that its formulas show #NAME?. */
export const RepairCard = ({ repair }: { repair: NonNullable<Host["repair"]> }) => {
  const { isBusy, outcome, attempt, undo } = useOutcome();
  const { working, withProgress } = useProgress();

  const run = (): Promise<void> =>
    attempt(async () => {
      const repaired = await withProgress(
        "Finding and re-entering formulas",
        "Canceled: nothing was entered.",
        repair,
      );
      return {
        message: inWords(repaired),
        undoAction: repaired.undo && {
          run: repaired.undo,
          said: "Undone: the formulas are back to what they were.",
        },
      };
    });

  return (
    <section class="card" aria-labelledby="repair-title">
      <h2 id="repair-title">Repair #NAME?</h2>
      <p>
        Re-enters Gablewright formulas that show #NAME? because the workbook was opened before the add-in.
      </p>
      <Button appearance="primary" disabledFocusable={isBusy} onClick={() => void run()}>
        Repair workbook
      </Button>
      {working && <Progress {...working} />}
      <OutcomeLine outcome={outcome} onUndo={undo} />
    </section>
  );
};
