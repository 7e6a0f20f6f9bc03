import { Button } from "@fluentui/react-button";
import { useState } from "preact/hooks";
import type { Host } from "../../workbook/host";
import type { ActiveSheet } from "../../workbook/activeSheet";
import { FilesField } from "../controls/FilesField";
import { TextAreaField } from "../controls/TextAreaField";
import { OutcomeLine } from "../parts/OutcomeLine";
import { Progress } from "../parts/Progress";
import { useProgress } from "../parts/useProgress";
import { listedSheets, undoAddedSheets, useOutcome } from "../parts/useOutcome";
import { classOptionsOf, type ClassForm } from "./classForm";
import type * as Tasks from "./practiceTasks";
import { useSheetChanged } from "./useSheetChanged";

interface Props {
  readonly host: Host;
  /** The class of pasted answers; students' files name their own class. */
  readonly form: ClassForm;
}

/** Marks students' files, a pasted table, or the active page. */
export const MarkingCard = ({ host, form }: Props) => {
  const [pasted, setPasted] = useState("");
  /** The page that the message is about; undefined where it isn't about a page. */
  const [checked, setChecked] = useState<ActiveSheet>();
  const { isBusy, outcome, attempt, undo, forget } = useOutcome();
  const { working, withProgress } = useProgress();
  useSheetChanged(host, checked, () => {
    setChecked(undefined);
    forget();
  });

  const mark = (act: (tasks: typeof Tasks) => Promise<Tasks.Marking>): Promise<void> =>
    attempt(async () => {
      setChecked(undefined);
      const marking = await act(await import("./practiceTasks"));
      return {
        message: `${marking.messages.join(" ")} Added ${listedSheets(marking.sheets)}.`,
        undoAction: undoAddedSheets(marking.undo),
      };
    });

  const check = (): Promise<void> =>
    attempt(async () => {
      const { checkSummary } = await import("./practiceTasks");
      // Read last: another sheet may become active while the code loads.
      const view = await host.activeSheet();
      setChecked(view);
      return { message: checkSummary(view).join(" ") };
    });

  return (
    <section class="card" aria-labelledby="marking-title">
      <h2 id="marking-title">Marking</h2>
      <p>
        Marks each answer right, near (with the common mistake), or wrong, and shows the class by topic with
        what to teach again. No answer key needed. Adds two sheets.
      </p>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void mark(({ markPasted }) => markPasted(host, pasted, classOptionsOf(form)));
        }}
      >
        <FilesField
          label="Students' files"
          name="marking-files"
          accept=".xlsx"
          multiple
          disabled={isBusy}
          onFiles={(files) =>
            void mark(({ markFiles }) =>
              withProgress("Files marked", "Canceled: no sheets were added.", (run) =>
                markFiles(host, files, run),
              ),
            )
          }
        />
        <TextAreaField
          label="Or paste rows: name, version, each answer in order"
          name="marking-pasted"
          rows={3}
          value={pasted}
          onValue={setPasted}
        />
        <p class="hint">
          One row per student, one column per answer, blank if there is none. Rows are marked as answers to
          the class above. Checking the active page marks its answers without showing the right ones, and
          changes nothing.
        </p>
        <Button appearance="primary" type="submit" disabledFocusable={isBusy || pasted.trim() === ""}>
          {isBusy ? "Working…" : "Mark pasted rows"}
        </Button>
        <Button disabledFocusable={isBusy} onClick={() => void check()}>
          Check active page
        </Button>
      </form>
      {working && <Progress {...working} />}
      <OutcomeLine outcome={outcome} onUndo={undo} />
    </section>
  );
};
