import type { Host } from "../hosts/host";
import type { NamedFile } from "../hosts/xlsx/practiceFiles";

/** A cell as a person sees it: its address, what it shows, the formula behind it, and what its error means. */
export interface WatchedCell {
  readonly address: string;
  readonly shows: string;
  readonly formula: string;
  readonly sentence: string;
}

/** Opening and saving files, where the host has no menu of its own for it. Both say what there is to know, by sentences. */
export interface WorkbookFiles {
  hasUnsaved(): Promise<boolean>;
  open(file: File): Promise<readonly string[]>;
  save(): Promise<readonly string[]>;
  /** What the sheet in front shows, as .csv. */
  saveCsv(): Promise<readonly string[]>;
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
