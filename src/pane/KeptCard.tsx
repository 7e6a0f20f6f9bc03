import { Button } from "@fluentui/react-button";
import { useEffect, useState } from "preact/hooks";
import { counted } from "../../shared/describe";
import { errorMessage } from "../workbook/errorMessage";
import { ChoiceField } from "./controls/ChoiceField";
import { OutcomeLine } from "./parts/OutcomeLine";
import type { KeptWorkbook, KeptWorkbooks } from "./parts/paneHost";
import { warningOf, useOutcome, type Done } from "./parts/useOutcome";

interface Props {
  readonly kept: KeptWorkbooks;
  readonly isShown: boolean;
  /** Called when another workbook has replaced the one shown. */
  readonly onOpened: () => void;
}

const time = new Intl.DateTimeFormat("en-US", {
  month: "short",
  day: "numeric",
  hour: "numeric",
  minute: "2-digit",
  second: "2-digit",
});

const megabytes = (bytes: number): string =>
  bytes < 100_000 ? "less than 0.1 MB" : `${(bytes / 1_000_000).toFixed(1)} MB`;

const where = ({ isInFile, openIn }: KeptWorkbook): string =>
  [isInFile ? "saved to a file" : "not saved to a file", ...(openIn ? [`open in ${openIn}`] : [])].join(", ");

interface WorkbookProps {
  readonly workbook: KeptWorkbook;
  readonly isBusy: boolean;
  readonly onRestore: (version: number) => void;
  readonly onDelete: () => void;
}

const Workbook = ({ workbook, isBusy, onRestore, onDelete }: WorkbookProps) => {
  const { name, openIn, versions } = workbook;
  const [newest] = versions;
  const [chosen, setChosen] = useState<number>();
  const version = versions.find(({ id }) => id === chosen) ?? newest;
  return (
    <li class="kept-workbook">
      <h3>{name}</h3>
      <p class="hint">{where(workbook)}</p>
      <ChoiceField
        label={`Version of ${name}`}
        value={String(version?.id)}
        choices={versions.map(({ id, keptAt }) => ({ value: String(id), label: time.format(keptAt) }))}
        onValue={(value) => setChosen(Number(value))}
      />
      {openIn !== "another tab" && (
        <Button disabledFocusable={isBusy} onClick={() => version && onRestore(version.id)}>
          Open this version
        </Button>
      )}
      {openIn === undefined && (
        <Button disabledFocusable={isBusy} onClick={onDelete}>
          Delete {name}
        </Button>
      )}
    </li>
  );
};

/** What the browser keeps on this computer: opens it again, and deletes it. */
export const KeptCard = ({ kept, isShown, onOpened }: Props) => {
  const { isBusy, outcome, attempt } = useOutcome();
  const [workbooks, setWorkbooks] = useState<readonly KeptWorkbook[]>();
  const [failure, setFailure] = useState<string>();

  const list = async (): Promise<void> => {
    try {
      setWorkbooks(await kept.list());
      setFailure(undefined);
    } catch (problem) {
      setFailure(errorMessage(problem));
    }
  };
  // Also after the workbook was kept again.
  useEffect(() => (isShown ? kept.watch(() => void list()) : undefined), [isShown]);

  const restore = async (version: number): Promise<Done> => {
    const { said, warnings } = await kept.restore(version, {
      onStage: () => undefined,
      signal: new AbortController().signal,
    });
    onOpened();
    return { message: said.join("\n"), ...warningOf(warnings) };
  };
  const then = async (act: () => Promise<void>, message: string): Promise<Done> => {
    await act();
    await list();
    return { message };
  };

  const bytes = workbooks?.reduce((sum, { sizeBytes }) => sum + sizeBytes, 0) ?? 0;
  const closed = workbooks?.filter(({ openIn }) => openIn === undefined) ?? [];
  return (
    <section class="card" aria-labelledby="kept-title">
      <h2 id="kept-title">Kept on this computer</h2>
      <p>
        The browser keeps each workbook a moment after every change: {kept.rule}. Nothing leaves this
        computer. A file of your own is still the safest place.
      </p>
      {failure && (
        <p role="alert" class="outcome failed">
          {failure}
        </p>
      )}
      {workbooks && (
        <>
          <p>
            {workbooks.length === 0
              ? "Nothing is kept yet."
              : `${counted(workbooks.length, "workbook")}, ${megabytes(bytes)}.`}
          </p>
          <ul class="kept-list">
            {workbooks.map((workbook) => (
              <Workbook
                key={workbook.workbook}
                workbook={workbook}
                isBusy={isBusy}
                onRestore={(version) => void attempt(() => restore(version))}
                onDelete={() =>
                  void attempt(() => then(() => kept.drop(workbook.workbook), `Deleted ${workbook.name}.`))
                }
              />
            ))}
          </ul>
          {closed.length > 0 && (
            <Button
              disabledFocusable={isBusy}
              onClick={() =>
                void attempt(() => then(kept.clear, "Deleted all workbooks that aren't open in a tab."))
              }
            >
              Delete all that aren't open
            </Button>
          )}
        </>
      )}
      <OutcomeLine outcome={outcome} />
    </section>
  );
};
