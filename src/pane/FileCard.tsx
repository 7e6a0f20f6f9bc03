import { Button } from "@fluentui/react-button";
import { useRef, useState } from "preact/hooks";
import { FilesField } from "./controls/FilesField";
import { OutcomeLine } from "./parts/OutcomeLine";
import type { FileRun, FileStage, WorkbookFiles } from "./parts/paneHost";
import { Progress } from "./parts/Progress";
import { cautionOf, useOutcome, type Done } from "./parts/useOutcome";

interface Props {
  readonly files: WorkbookFiles;
  /** Another workbook is shown now. */
  readonly onOpened: () => void;
}

const inLines = (sentences: readonly string[]): Done => ({ message: sentences.join("\n") });

/** Opens an .xlsx workbook in the place of the one shown, and saves the one shown. */
export const FileCard = ({ files, onOpened }: Props) => {
  const { isBusy, outcome, attempt } = useOutcome();
  const [working, setWorking] = useState<FileStage & { readonly cancel: () => void }>();
  const [waiting, setWaiting] = useState<File>();
  const field = useRef<HTMLInputElement>(null);

  /** What is said, or undefined where a question comes first. A question that stood there is done with. */
  const run = (act: () => Promise<Done | undefined>): Promise<void> =>
    attempt(() => {
      setWaiting(undefined);
      return act();
    });

  /** Lets a long work show what it does, and be canceled. */
  const watched = async <Result,>(
    whenCanceled: string,
    work: (run: FileRun) => Promise<Result>,
  ): Promise<Result> => {
    const stop = new AbortController();
    const cancel = (): void => stop.abort(new Error(whenCanceled));
    const onStage = (stage: FileStage): void => setWorking({ ...stage, cancel });
    try {
      return await work({ onStage, signal: stop.signal });
    } finally {
      setWorking(undefined);
    }
  };
  const open = async (file: File): Promise<Done> => {
    const { said, warnings } = await watched("Canceled: the workbook is as it was.", (each) =>
      files.open(file, each),
    );
    onOpened();
    return { ...inLines(said), ...cautionOf(warnings) };
  };
  const save = async (): Promise<Done> =>
    inLines(await watched("Canceled: nothing was saved.", (each) => files.save(each)));
  const saveCsv = async (): Promise<Done> => inLines(await files.saveCsv());

  const choose = async (file: File): Promise<Done | undefined> => {
    if (!(await files.hasUnsaved())) return open(file);
    setWaiting(file);
    return undefined;
  };
  /** The buttons of the question go with it; the keyboard goes back to where the question came from. */
  const answer = (act: () => void): void => {
    field.current?.focus();
    act();
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
          inputRef={field}
          onFiles={([file]) => file && void run(() => choose(file))}
        />
        {waiting && (
          <>
            <p role="alert">
              The workbook shown has changes that aren't saved. Opening {waiting.name} drops them.
            </p>
            <Button appearance="primary" onClick={() => answer(() => void run(() => open(waiting)))}>
              Open, drop the changes
            </Button>
            <Button onClick={() => answer(() => setWaiting(undefined))}>Keep the workbook shown</Button>
          </>
        )}
        <Button appearance="primary" disabledFocusable={isBusy} onClick={() => void run(save)}>
          {isBusy ? "Working…" : "Save .xlsx"}
        </Button>
        <Button disabledFocusable={isBusy} onClick={() => void run(saveCsv)}>
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
      <OutcomeLine outcome={outcome} />
    </section>
  );
};
