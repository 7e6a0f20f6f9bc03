import { Button } from "@fluentui/react-button";
import { useState } from "preact/hooks";
import { failureInWords } from "../failureInWords";
import { FilesField } from "./controls/FilesField";
import type { FileRun, FileStage, WorkbookFiles } from "./paneHost";
import { Progress } from "./Progress";

interface Outcome {
  readonly kind: "written" | "failed";
  readonly sentences: readonly string[];
}

/** Opens an .xlsx workbook in the place of the one shown, and saves the one shown. */
export const FileCard = ({ files }: { files: WorkbookFiles }) => {
  const [isBusy, setIsBusy] = useState(false);
  const [working, setWorking] = useState<FileStage & { readonly cancel: () => void }>();
  const [waiting, setWaiting] = useState<File>();
  const [outcome, setOutcome] = useState<Outcome>();

  const run = async (action: () => Promise<readonly string[]>): Promise<void> => {
    if (isBusy) return;
    setIsBusy(true);
    setWaiting(undefined);
    setOutcome(undefined);
    try {
      setOutcome({ kind: "written", sentences: await action() });
    } catch (failure) {
      setOutcome({
        kind: "failed",
        sentences: [failureInWords(failure)],
      });
    } finally {
      setIsBusy(false);
      setWorking(undefined);
    }
  };

  /** Lets a long work show what it does, and be cancelled. */
  const runLong = (
    whenCancelled: string,
    action: (run: FileRun) => Promise<readonly string[]>,
  ): Promise<void> => {
    const stop = new AbortController();
    const cancel = (): void => stop.abort(new Error(whenCancelled));
    const onStage = (stage: FileStage): void => setWorking({ ...stage, cancel });
    return run(() => action({ onStage, signal: stop.signal }));
  };
  const open = (file: File): Promise<void> =>
    runLong("Cancelled: the workbook is as it was.", (run) => files.open(file, run));
  const save = (): Promise<void> => runLong("Cancelled: nothing was saved.", (run) => files.save(run));

  const choose = async ([file]: readonly File[]): Promise<void> => {
    if (!file) return;
    if (await files.hasUnsaved()) setWaiting(file);
    else await open(file);
  };

  return (
    <section class="card" aria-labelledby="file-title">
      <h2 id="file-title">Workbook file</h2>
      <p>
        An .xlsx opens in the place of the workbook shown. Saving alters in it only what you changed here.
      </p>
      <form onSubmit={(event) => event.preventDefault()}>
        <FilesField
          label="Open .xlsx"
          name="workbook-file"
          accept=".xlsx,.xlsm"
          disabled={isBusy}
          onFiles={(chosen) => void choose(chosen)}
        />
        {waiting && (
          <>
            <p role="alert">
              The workbook shown has changes that aren't saved. Opening {waiting.name} drops them.
            </p>
            <Button appearance="primary" onClick={() => void open(waiting)}>
              Open, drop the changes
            </Button>
            <Button onClick={() => setWaiting(undefined)}>Keep the workbook shown</Button>
          </>
        )}
        <Button appearance="primary" disabledFocusable={isBusy} onClick={() => void save()}>
          {isBusy ? "Working…" : "Save .xlsx"}
        </Button>
        <Button disabledFocusable={isBusy} onClick={() => void run(() => files.saveCsv())}>
          Save this sheet as .csv
        </Button>
      </form>
      {working && (
        <Progress
          words={working.words}
          areWordsShown
          onCancel={working.canCancel ? working.cancel : undefined}
        />
      )}
      <div role="status" class={outcome ? `outcome ${outcome.kind}` : "outcome"}>
        {outcome?.sentences.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
    </section>
  );
};
