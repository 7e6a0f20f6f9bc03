import type { Matrix } from "../../../shared/cell";
import type { Host } from "../../workbook/host";
import type { NamedFile } from "../../practice/files/practiceFiles";

/** A cell as a person sees it: its address, what it shows, the formula behind it, and what its error means. */
export interface WatchedCell {
  readonly address: string;
  readonly shows: string;
  readonly formula: string;
  readonly sentence: string;
}

/** What is being done with a file just now. */
export interface FileStage {
  /** `Reading the file` */
  readonly words: string;
  /** Whether it can still be left as if it had never begun. */
  readonly canCancel: boolean;
}

/** A work on a file that may take long. */
export interface FileRun {
  readonly onStage: (stage: FileStage) => void;
  readonly signal: AbortSignal;
}

/** What there is to know of a file that was opened, by sentences. */
export interface FileNews {
  readonly said: readonly string[];
  /** What a person should look into. */
  readonly warnings: readonly string[];
}

/** Opening and saving files, where the host has no menu of its own for it. Both say what there is to know, by sentences. */
export interface WorkbookFiles {
  hasUnsaved(): Promise<boolean>;
  /** Canceled, it leaves the workbook as it was. */
  open(file: File, run: FileRun): Promise<FileNews>;
  save(run: FileRun): Promise<readonly string[]>;
  /** What the sheet in front shows, as .csv. */
  saveCsv(): Promise<readonly string[]>;
  /** A table as a .csv file of this name. */
  saveTable(name: string, table: Matrix): Promise<readonly string[]>;
}

/** Giving a class's files to the teacher. */
export interface HandOut {
  /** What the button says. */
  readonly action: string;
  /** Why so many files can't be given, in a sentence; undefined where they can. */
  readonly refusal?: (count: number) => string | undefined;
  /** Gives the files, and says where they are. */
  deliver(title: string, files: readonly NamedFile[]): Promise<string>;
}

/** A host that the pane stands beside. Excel shows an error's sentence itself, so only the local workbook is watched. */
export interface PaneHost extends Host {
  /** How a keyboard comes here and goes back, where the host doesn't see to it by itself. */
  readonly keyboardHint?: string;
  /** Calls back with the selected cell whenever it changes. */
  readonly watchCell?: (listener: (cell: WatchedCell) => void) => void;
  readonly files?: WorkbookFiles;
  readonly handOut?: HandOut;
}
