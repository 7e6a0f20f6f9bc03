import type { Matrix } from "../../../shared/cell";
import type { Host } from "../../workbook/host";
import type { NamedFile } from "../../practice/files/practiceFiles";

/** The selected cell: its address, displayed value, formula, and the meaning of its error. */
export interface SelectedCell {
  readonly address: string;
  readonly shows: string;
  readonly formula: string;
  readonly sentence: string;
}

/** A step of opening or saving a file. */
export interface FileStage {
  /** `Reading the file` */
  readonly words: string;
  /** Whether it can still be canceled without a trace. */
  readonly canCancel: boolean;
}

/** Progress and cancellation of opening or saving a file. */
export interface FileRun {
  readonly onStage: (stage: FileStage) => void;
  readonly signal: AbortSignal;
}

/** Messages about a file that was opened. */
export interface FileReport {
  readonly said: readonly string[];
  /** Problems to check. */
  readonly warnings: readonly string[];
}

/** Opening and saving files, for a host without a File menu. Both return messages. */
export interface WorkbookFiles {
  hasUnsaved(): Promise<boolean>;
  /** If canceled, the workbook stays unchanged. */
  open(file: File, run: FileRun): Promise<FileReport>;
  save(run: FileRun): Promise<readonly string[]>;
  /** Saves the displayed values of the active sheet as .csv. */
  saveCsv(): Promise<readonly string[]>;
  /** A table as a .csv file of this name. */
  saveTable(name: string, table: Matrix): Promise<readonly string[]>;
}

/** Whether the workbook would survive: in a file of the user, and on this computer, where the browser keeps it. */
export interface KeepStatus {
  /** Whether a file holds every change. */
  readonly isInFile: boolean;
  readonly fileName?: string;
  /** When the browser last kept the workbook; undefined if it has no need to. */
  readonly keptAt?: number;
  /** Why the browser keeps nothing. */
  readonly failure?: string;
}

/** A workbook as it was at some time. */
export interface KeptVersion {
  readonly id: number;
  readonly keptAt: number;
}

/** A workbook that the browser keeps on this computer. */
export interface KeptWorkbook {
  readonly workbook: string;
  readonly name: string;
  readonly isInFile: boolean;
  readonly openIn?: "this tab" | "another tab";
  /** The newest first; at least one. */
  readonly versions: readonly KeptVersion[];
  readonly sizeBytes: number;
}

/** What the browser keeps of the workbooks that were open in it. */
export interface KeptWorkbooks {
  /** How much is kept: `its last 10 versions, ...` */
  readonly rule: string;
  /** Calls back now and whenever the status changes; returns how to stop. */
  watch(listener: (status: KeepStatus) => void): () => void;
  /** The most recently kept first. */
  list(): Promise<readonly KeptWorkbook[]>;
  /** Replaces the workbook shown, which is kept before. */
  restore(version: number, run: FileRun): Promise<FileReport>;
  drop(workbook: string): Promise<void>;
  /** Drops everything except what is open in a tab. */
  clear(): Promise<void>;
}

/** Gives a class's files to the teacher. */
export interface HandOut {
  /** The button's label. */
  readonly action: string;
  /** A message if there are too many files to give; undefined otherwise. */
  readonly refusal?: (count: number) => string | undefined;
  /** Gives the files, and returns a message that says where they are. */
  deliver(title: string, files: readonly NamedFile[]): Promise<string>;
}

/** The program that shows the pane. Excel explains errors itself, so only the local workbook has a selected-cell card. */
export interface PaneHost extends Host {
  /** How to reach the pane and return to the sheet by keyboard, if the host has no keys of its own for that. */
  readonly keyboardHint?: string;
  /** Calls back with the selected cell whenever it changes. */
  readonly watchCell?: (listener: (cell: SelectedCell) => void) => void;
  readonly files?: WorkbookFiles;
  readonly kept?: KeptWorkbooks;
  readonly handOut?: HandOut;
}
