import type { FileReport, FileRun, KeepStatus, KeptWorkbooks } from "../../../pane/parts/paneHost";
import type { LocalFiles } from "../files/workbookFiles";
import { autosave, type Autosave } from "./autosave";
import type { KeptState } from "./keptState";
import type { StateStore } from "./stateStore";
import { keptWorkbooks, sourceOf } from "./keptWorkbooks";
import { heldWorkbooks, holdWorkbook, newWorkbookId } from "./tabWorkbook";

interface Tools {
  readonly files: LocalFiles;
  readonly store: Promise<StateStore>;
  /** Calls back when the workbook on the page was edited; it stays when another is shown. */
  readonly onEdited: (listener: () => void) => () => void;
  readonly now: () => number;
}

export interface Keeper extends Omit<KeptWorkbooks, "rule"> {
  /** Another workbook is about to replace the one shown: keeps this one, and starts anew. */
  beforeAnother(): Promise<void>;
  /** The first workbook of the page, or another, has been opened from a file or a kept state. */
  opened(): void;
}

const NO_DATABASE =
  "This browser keeps nothing on this computer, as in a private window. Save to a file often.";

const failureInWords = (failure: unknown): string =>
  failure instanceof DOMException && failure.name === "QuotaExceededError"
    ? "There is no room left to keep this workbook in the browser. Save to a file, then clear what is kept under Sheets."
    : `This workbook couldn't be kept in the browser (${failure instanceof Error ? failure.message : String(failure)}). Save to a file.`;

/** The workbook that the page starts with, which this tab holds already, and the state that it was opened from. */
interface FirstWorkbook {
  readonly id: string;
  readonly state?: KeptState;
}

/** Keeps the workbook on the page, and gives back what was kept. */
export const createKeeper = (first: FirstWorkbook, { files, store, onEdited, now }: Tools): Keeper => {
  let workbook = first.id;
  let next: string | undefined;
  let last = first.state;
  let failure: string | undefined;
  const listeners = new Set<(status: KeepStatus) => void>();

  const status = (): KeepStatus => {
    const { isInFile, fileName } = files.mark();
    return {
      isInFile,
      ...(fileName !== undefined && { fileName }),
      ...(last && { keptAt: last.keptAt }),
      ...(failure !== undefined && { failure }),
    };
  };
  const tell = (): void => {
    for (const listener of listeners) listener(status());
  };
  const keep = async (): Promise<void> => {
    try {
      const kept = await store.catch(() => undefined);
      if (!kept) {
        failure = NO_DATABASE;
        return;
      }
      const { bytes, title } = await files.toKeep();
      const { isInFile, fileName } = files.mark();
      last = await kept.keep(
        {
          workbook,
          name: fileName?.replace(/\.xls[xm]$/i, "") ?? title,
          ...(fileName !== undefined && { fileName }),
          keptAt: now(),
          isInFile,
        },
        bytes,
      );
      failure = undefined;
    } catch (problem) {
      failure = failureInWords(problem);
    } finally {
      tell();
    }
  };
  const start = (): Autosave => autosave({ onEdited, keep });
  let saving = start();

  onEdited(tell);
  /** Notes that the last state is in the file that was just saved. */
  const noteSaved = async (): Promise<void> => {
    try {
      await saving.flush();
      const { isInFile, fileName = "" } = files.mark();
      // Another workbook may be opened meanwhile.
      const state = last;
      if (state && isInFile) await (await store).markInFile(state.id, fileName);
    } catch (problem) {
      failure = failureInWords(problem);
    } finally {
      tell();
    }
  };
  files.onSaved(() => void noteSaved());
  void store.catch(() => {
    failure = NO_DATABASE;
    tell();
  });

  const statesOf = async (id: string): Promise<number[]> =>
    (await (await store).list()).filter((state) => state.workbook === id).map((state) => state.id);

  return {
    watch: (listener) => {
      listeners.add(listener);
      listener(status());
      return () => listeners.delete(listener);
    },
    list: async () => keptWorkbooks(await (await store).list(), workbook, await heldWorkbooks()),
    restore: async (version: number, run: FileRun): Promise<FileReport> => {
      const kept = await store;
      const state = (await kept.list()).find(({ id }) => id === version);
      const bytes = await kept.file(version);
      if (!state || !bytes) throw new Error("That version is no longer kept. Choose another.");
      if (state.workbook !== workbook && !(await holdWorkbook(state.workbook)))
        throw new Error(`"${state.name}" is open in another tab. Go on there, or close that tab first.`);
      next = state.workbook;
      try {
        return await files.openSource(sourceOf(state, bytes), run);
      } catch (problem) {
        next = undefined;
        await holdWorkbook(workbook);
        throw problem;
      }
    },
    drop: async (id) => {
      await (await store).drop(await statesOf(id));
    },
    clear: async () => {
      const open = await heldWorkbooks();
      const states = await (await store).list();
      await (await store).drop(states.filter((state) => !open.has(state.workbook)).map(({ id }) => id));
    },
    beforeAnother: async () => {
      await saving.flush();
      saving.stop();
      workbook = next ?? newWorkbookId();
      next = undefined;
      last = undefined;
      await holdWorkbook(workbook);
    },
    opened: () => {
      saving.stop();
      saving = start();
      // What was opened is kept even before it is edited, so that a reload shows it again.
      void keep();
    },
  };
};
