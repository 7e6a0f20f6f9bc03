import { useState } from "preact/hooks";
import { failureInWords } from "../failureInWords";
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

  const choose = async (input: HTMLInputElement): Promise<void> => {
    const file = input.files?.[0];
    // The same file can be chosen again.
    input.value = "";
    if (!file) return;
    if (await files.hasUnsaved()) setWaiting(file);
    else await open(file);
  };

  return (
    <section class="card" aria-labelledby="file-title">
      <h2 id="file-title">Workbook file</h2>
      <p>An .xlsx opens in the place of the workbook shown. Saving changes in it only what changed here.</p>
      <form onSubmit={(event) => event.preventDefault()}>
        <label>
          Open .xlsx
          <input
            type="file"
            name="workbook-file"
            accept=".xlsx,.xlsm"
            disabled={isBusy}
            onChange={(event) => void choose(event.currentTarget)}
          />
        </label>
        {waiting && (
          <>
            <p role="alert">
              The workbook shown has changes that aren't saved. Opening {waiting.name} drops them.
            </p>
            <button type="button" onClick={() => void open(waiting)}>
              Open, drop the changes
            </button>
            <button type="button" class="quiet" onClick={() => setWaiting(undefined)}>
              Keep the workbook shown
            </button>
          </>
        )}
        <button type="button" disabled={isBusy} onClick={() => void save()}>
          {isBusy ? "Working…" : "Save .xlsx"}
        </button>
        <button type="button" class="quiet" disabled={isBusy} onClick={() => void run(() => files.saveCsv())}>
          Save this sheet as .csv
        </button>
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
