import { Button } from "@fluentui/react-button";
import { useState } from "preact/hooks";
import type { Host } from "../../workbook/host";
import type { ActiveSheet } from "../../workbook/activeSheet";
import { FilesField } from "../controls/FilesField";
import { LinesField } from "../controls/LinesField";
import { OutcomeLine } from "../parts/OutcomeLine";
import { Progress } from "../parts/Progress";
import { useLongRun } from "../parts/useLongRun";
import { listedSheets, sheetsAway, useOutcome } from "../parts/useOutcome";
import { classOptionsOf, type ClassForm } from "./classForm";
import type * as Tasks from "./tasks";
import { useViewLeft } from "./useViewLeft";

interface Props {
  readonly host: Host;
  /** The class that pasted answers are of; files say themselves which they are of. */
  readonly form: ClassForm;
}

/** Marks what students hand in: files, a pasted table, or the page in front. */
export const MarkingCard = ({ host, form }: Props) => {
  const [pasted, setPasted] = useState("");
  /** The page that the outcome is about; undefined where it is about none. */
  const [checked, setChecked] = useState<ActiveSheet>();
  const { isBusy, outcome, attempt, undo, forget } = useOutcome();
  const { working, watched } = useLongRun();
  useViewLeft(host, checked, () => {
    setChecked(undefined);
    forget();
  });

  const mark = (act: (tasks: typeof Tasks) => Promise<Tasks.Marking>): Promise<void> =>
    attempt(async () => {
      setChecked(undefined);
      const marking = await act(await import("./tasks"));
      return {
        message: `${marking.sentences.join(" ")} Added ${listedSheets(marking.sheets)}.`,
        takeBack: sheetsAway(marking.undo),
      };
    });

  const check = (): Promise<void> =>
    attempt(async () => {
      const { checkInWords } = await import("./tasks");
      // Read at last: what comes to front while the code loads would else be taken for the page that was checked.
      const view = await host.activeSheet();
      setChecked(view);
      return { message: checkInWords(view).join(" ") };
    });

  return (
    <section class="card" aria-labelledby="marking-title">
      <h2 id="marking-title">Marking</h2>
      <p>
        Each answer right, near with the slip named, or wrong; the class by topic, and what to teach again. No
        key is needed. The marks go on two new sheets.
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
              watched("Files marked", "Canceled: nothing was written.", (run) => markFiles(host, files, run)),
            )
          }
        />
        <LinesField
          label="Or paste rows of a sheet: name, version, each answer in order"
          name="marking-pasted"
          rows={3}
          value={pasted}
          onValue={setPasted}
        />
        <p class="hint">
          A row a student, a column for each answer, blank where there is none. They are marked as answers to
          the class whose seed and choices stand above. Checking the page in front says how its answers stand,
          tells none, and writes nothing.
        </p>
        <Button appearance="primary" type="submit" disabledFocusable={isBusy || pasted.trim() === ""}>
          {isBusy ? "Working…" : "Mark what is pasted"}
        </Button>
        <Button disabledFocusable={isBusy} onClick={() => void check()}>
          Check the page in front
        </Button>
      </form>
      {working && <Progress {...working} />}
      <OutcomeLine outcome={outcome} onUndo={undo} />
    </section>
  );
};
