import { Button } from "@fluentui/react-button";
import { useEffect, useRef, useState } from "preact/hooks";
import { FilesField } from "./controls/FilesField";
import { OutcomeLine } from "./parts/OutcomeLine";
import type { FileRun, FileStage, WorkbookFiles } from "./parts/paneHost";
import { Progress } from "./parts/Progress";
import { warningOf, useOutcome, type Done } from "./parts/useOutcome";

interface Props {
  readonly files: WorkbookFiles;
  /** Called when another workbook has replaced the one shown. */
  readonly onOpened: () => void;
}

const inLines = (sentences: readonly string[]): Done => ({ message: sentences.join("\n") });

/** Opens an .xlsx workbook instead of the one shown, and saves the one shown. */
export const FileCard = ({ files, onOpened }: Props) => {
  const { isBusy, outcome, attempt } = useOutcome();
  const [working, setWorking] = useState<FileStage & { readonly cancel: () => void }>();
  const [waiting, setWaiting] = useState<File>();
  const field = useRef<HTMLInputElement>(null);

  /** Runs an action and drops any open question. The action returns undefined if it asks a question first. */
  const run = (act: () => Promise<Done | undefined>): Promise<void> =>
    attempt(() => {
      setWaiting(undefined);
      return act();
    });

  /** Shows the progress of a long action, with a way to cancel it. */
  const withProgress = async <Result,>(
    canceledMessage: string,
    work: (run: FileRun) => Promise<Result>,
  ): Promise<Result> => {
    const stop = new AbortController();
    const cancel = (): void => stop.abort(new Error(canceledMessage));
    const onStage = (stage: FileStage): void => setWorking({ ...stage, cancel });
    try {
      return await work({ onStage, signal: stop.signal });
    } finally {
      setWorking(undefined);
    }
  };
  const open = async (file: File): Promise<Done> => {
    const { said, warnings } = await withProgress("Canceled: the workbook is unchanged.", (each) =>
      files.open(file, each),
    );
    onOpened();
    return { ...inLines(said), ...warningOf(warnings) };
  };
  const save = async (): Promise<Done> =>
    inLines(await withProgress("Canceled: nothing was saved.", (each) => files.save(each)));
  const saveCsv = async (): Promise<Done> => inLines(await files.saveCsv());

  const choose = async (file: File): Promise<Done | undefined> => {
    if (!(await files.hasUnsaved())) return open(file);
    setWaiting(file);
    return undefined;
  };
  const saveNow = (): void => void run(save);
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.shiftKey || event.altKey || event.key !== "s") return;
      event.preventDefault();
      saveNow();
    };
    // Before the grid, which types into a cell on any key.
    window.addEventListener("keydown", onKey, { capture: true });
    return () => window.removeEventListener("keydown", onKey, { capture: true });
  });
  /** The question's buttons disappear, so focus returns to the file field. */
  const answer = (act: () => void): void => {
    field.current?.focus();
    act();
  };

  return (
    <section class="card" aria-labelledby="file-title">
      <h2 id="file-title">Workbook file</h2>
      <p>Opening an .xlsx file replaces the workbook shown here. Saving changes only what you edited.</p>
      <form onSubmit={(event) => event.preventDefault()}>
        <FilesField
          label="Open .xlsx"
          name="workbook-file"
          accept=".xlsx,.xlsm"
          disabled={isBusy}
          inputRef={field}
          onFiles={([file]) => file && void run(() => choose(file))}
        />
        {waiting && (
          <>
            <p role="alert">
              This workbook has changes that aren't saved to a file. Opening {waiting.name} replaces it.
            </p>
            <Button appearance="primary" onClick={() => answer(() => void run(() => open(waiting)))}>
              Discard changes and open
            </Button>
            <Button onClick={() => answer(() => setWaiting(undefined))}>Keep this workbook</Button>
          </>
        )}
        <Button appearance="primary" disabledFocusable={isBusy} onClick={saveNow}>
          {isBusy ? "Working…" : "Save .xlsx"}
        </Button>
        <Button disabledFocusable={isBusy} onClick={() => void run(saveCsv)}>
          Save this sheet as .csv
        </Button>
      </form>
      {working && (
        <Progress
          label={working.words}
          isLabelShown
          onCancel={working.canCancel ? working.cancel : undefined}
        />
      )}
      <OutcomeLine outcome={outcome} />
    </section>
  );
};
