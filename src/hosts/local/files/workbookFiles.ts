import { counted } from "../../../../shared/describe";
import type { FileReport, FileRun, WorkbookFiles } from "../../../pane/parts/paneHost";
import type { Book, BookSheet } from "../../../xlsx/book/book";
import type { SheetMoves } from "../../../xlsx/book/rowColumnMoves";
import { differingResults } from "../../../xlsx/write/cachedResults";
import type { canBeDrawn } from "../pictures/decodedImage";
import type { download } from "./download";
import type { ChooseTarget } from "./fileTarget";
import { withoutDamagedPictures } from "./damagedPictures";
import type { FileWork } from "./fileWork";
import type { PageWorkbook } from "../workbook/pageWorkbook";
import { workbookTitle } from "./workbookTitle";

const CSV = "text/csv;charset=utf-8";
const USUAL_NAME = "Gablewright.xlsx";
/** As many cells as someone would check. */
const MOST_LISTED = 5;

/** The file that the workbook on the page came from. */
interface OpenedFile {
  readonly name: string;
  readonly isNamed: boolean;
  readonly bytes: Uint8Array;
  readonly inFile: Book;
  readonly calculated: Book;
  readonly doubtful: readonly string[];
}

const listed = (things: readonly string[]): string => new Intl.ListFormat("en").format(things);

const firstOf = (places: readonly string[]): string =>
  places.length <= MOST_LISTED
    ? listed(places)
    : listed([...places.slice(0, MOST_LISTED), `${places.length - MOST_LISTED} more`]);

const damagedInWords = (pictures: number): string[] =>
  pictures === 0 ? [] : [counted(pictures, "damaged picture")];

/** With more formulas, the first calculation stops the page for so long that it is announced with their number. */
const MOST_UNANNOUNCED = 20_000;

const formulasIn = ({ sheets }: Book): number => {
  let formulas = 0;
  for (const { cells } of sheets)
    for (const row of cells.values())
      for (const { formula } of row.values()) if (formula !== undefined) formulas += 1;
  return formulas;
};

const showingInWords = (book: Book): string => {
  const formulas = formulasIn(book);
  return formulas <= MOST_UNANNOUNCED
    ? "Showing and calculating the workbook"
    : `Showing and calculating ${formulas.toLocaleString("en-US")} formulas. The page doesn't respond for part of this`;
};

/** The messages after a file has been opened. */
const openedInWords = ({ name, doubtful, inFile }: OpenedFile, unseen: readonly string[]): string[] => [
  `Opened ${name}: ${inFile.sheets.length === 1 ? "1 sheet" : `${inFile.sheets.length} sheets`}.`,
  ...(unseen.length > 0 ? [`Kept in the file but not shown here: ${listed(unseen)}.`] : []),
  ...(doubtful.length > 0
    ? [
        `${doubtful.length === 1 ? "1 formula gives" : `${doubtful.length} formulas give`} a different result here than in the file: ${firstOf(doubtful)}. The file keeps its own result${doubtful.length === 1 ? " until a cell that the formula reads" : "s until a cell that the formulas read"} is changed here.`,
      ]
    : []),
];

export interface FileTools {
  /** Replaces the workbook on the page. */
  readonly show: (book: Book) => Promise<PageWorkbook>;
  /** The workbook on the page is about to be replaced. */
  readonly beforeAnother: () => Promise<void>;
  readonly work: FileWork;
  readonly canBeDrawn: typeof canBeDrawn;
  readonly download: typeof download;
  readonly chooseTarget: ChooseTarget;
}

/** An .xlsx file to open, or a state that the browser kept of one. */
export interface SourceFile {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** Whether the user has a file of this name. */
  readonly isNamed: boolean;
  /** Whether that file holds this state. */
  readonly isInFile: boolean;
}

/** A file that has been read, and how to go on once its workbook is on the page. */
export interface ReadFile {
  readonly shown: Book;
  readonly unseen: readonly string[];
  /** Makes it the file that the workbook comes from. The workbook must have been calculated. */
  adopt(workbook: PageWorkbook): Promise<FileReport>;
}

/** The workbook as a file. */
interface WrittenFile {
  readonly bytes: Uint8Array;
  /** `Barn, north yard` */
  readonly title: string;
  /** The last edit that it holds. */
  readonly lastEdit: unknown;
  readonly isUnchanged: boolean;
  /** The number of pictures left out. */
  readonly lostPictures: number;
}

interface WorkbookSnapshot {
  readonly lastEdit: unknown;
  readonly book: Book;
  readonly movesBySheet: ReadonlyMap<string, SheetMoves>;
  readonly lostPictures: number;
}

/** Whether a file of the user holds the workbook as it is, and which. */
export interface FileMark {
  readonly isInFile: boolean;
  readonly fileName: string | undefined;
}

export interface LocalFiles extends WorkbookFiles {
  read(file: SourceFile, signal: AbortSignal): Promise<ReadFile>;
  /** Replaces the workbook on the page with a file that isn't chosen from disk. */
  openSource(file: SourceFile, run: FileRun): Promise<FileReport>;
  /** The workbook as a file, for autosave. It doesn't disturb a cell that is being edited. */
  toKeep(): Promise<WrittenFile>;
  mark(): FileMark;
  /** Calls back after another workbook has been opened. */
  onOpened(listener: () => void): void;
  /** Calls back after the workbook was saved to a file. */
  onSaved(listener: () => void): void;
}

/** What a save compares with: without the pictures, which may be large and stay in the file anyway. */
const withoutPictures = (book: Book): Book => ({
  ...book,
  sheets: book.sheets.map((sheet) => ({ ...sheet, filePictures: [] })),
});

/** No edit is this one, so a workbook with this mark is in no file. */
const NOWHERE = Symbol("in no file");

/** Opens and saves files. */
export const workbookFiles = (
  ready: Promise<PageWorkbook>,
  { show, beforeAnother, work, canBeDrawn, download, chooseTarget }: FileTools,
): LocalFiles => {
  let base: OpenedFile | undefined;
  let savedName: string | undefined;
  let current: PageWorkbook | undefined;
  /** The last edit that a file holds. The example that the page starts with needs no file. */
  let savedEdit: unknown = null;
  const openedListeners: (() => void)[] = [];
  const savedListeners: (() => void)[] = [];
  void ready.then((workbook) => {
    current ??= workbook;
  });

  const read = async (
    { name, bytes, isNamed, isInFile }: SourceFile,
    signal: AbortSignal,
  ): Promise<ReadFile> => {
    const { book, notShown } = await work.read(bytes, signal);
    const { book: shown, damaged } = await withoutDamagedPictures(book, canBeDrawn, signal);
    signal.throwIfAborted();
    const unseen = [...notShown, ...damagedInWords(damaged)];
    return {
      shown,
      unseen,
      adopt: async (workbook) => {
        const inFile = withoutPictures(book);
        const calculated = workbook.book();
        base = { name, isNamed, bytes, inFile, calculated, doubtful: differingResults(inFile, calculated) };
        current = workbook;
        savedEdit = isInFile ? workbook.lastEdit() : NOWHERE;
        const { brokenSeals } = await import("../../../sheets/sealCheck/brokenSeals");
        return { said: openedInWords(base, unseen), warnings: brokenSeals(workbook.contents()) };
      },
    };
  };

  const openSource = async (file: SourceFile, { onStage, signal }: FileRun): Promise<FileReport> => {
    onStage({ words: "Reading the file", canCancel: true });
    const before = await ready;
    const edit = before.lastEdit();
    const source = await read(file, signal);
    await before.finishEditing();
    if (before.lastEdit() !== edit)
      throw new Error(
        `The workbook was changed while ${file.name} was being read, so the file wasn't opened. Save the workbook, or open the file again.`,
      );
    onStage({ words: showingInWords(source.shown), canCancel: false });
    await beforeAnother();
    // From here on, the workbook on the page no longer comes from the file that was open before, even if this fails.
    base = undefined;
    savedName = undefined;
    savedEdit = null;
    chooseTarget.forget();
    const workbook = await show(source.shown);
    await workbook.calculated;
    const report = await source.adopt(workbook);
    for (const listener of openedListeners) listener();
    return report;
  };

  /** The workbook as it is now. Pictures take a moment to read: if it was edited meanwhile, it is read again. */
  const snapshot = async (workbook: PageWorkbook): Promise<WorkbookSnapshot> => {
    const lastEdit = workbook.lastEdit();
    const book = workbook.book();
    const movesBySheet = workbook.movesBySheet();
    const { bySheet, lost } = await workbook.pictures();
    if (workbook.lastEdit() !== lastEdit) return snapshot(workbook);
    const sheets = book.sheets.map((sheet): BookSheet => {
      const pictures = bySheet.get(sheet.name);
      return pictures ? { ...sheet, pictures } : sheet;
    });
    return { lastEdit, book: { ...book, sheets }, movesBySheet, lostPictures: lost };
  };

  const write = async (workbook: PageWorkbook, signal: AbortSignal): Promise<WrittenFile> => {
    const { lastEdit, book, movesBySheet, lostPictures } = await snapshot(workbook);
    const { changed } = await work.write(
      {
        ...(base && { from: { bytes: base.bytes, inFile: base.inFile, calculated: base.calculated } }),
        now: book,
        options: { movesBySheet, hasDifferingResults: (base?.doubtful.length ?? 0) > 0 },
      },
      signal,
    );
    const bytes = changed ?? base?.bytes;
    if (!bytes) throw new Error("There is nothing to save.");
    return { bytes, title: workbookTitle(book), lastEdit, isUnchanged: changed === undefined, lostPictures };
  };

  return {
    read,
    openSource,
    mark: () => ({
      isInFile: current === undefined || current.lastEdit() === savedEdit,
      fileName: savedName ?? (base?.isNamed ? base.name : undefined),
    }),
    onOpened: (listener) => {
      openedListeners.push(listener);
    },
    onSaved: (listener) => {
      savedListeners.push(listener);
    },
    toKeep: async () => {
      const workbook = await ready;
      let edit: unknown;
      // A sheet that is half written, or half calculated, is no state that anybody has seen.
      do {
        edit = workbook.lastEdit();
        await workbook.written();
        await workbook.settled();
      } while (workbook.lastEdit() !== edit);
      return write(workbook, new AbortController().signal);
    },
    hasUnsaved: async () => {
      const workbook = await ready;
      await workbook.finishEditing();
      return workbook.lastEdit() !== savedEdit;
    },
    open: async (chosen, run) =>
      openSource(
        {
          name: chosen.name,
          bytes: new Uint8Array(await chosen.arrayBuffer()),
          isNamed: true,
          isInFile: true,
        },
        run,
      ),
    saveCsv: async () => {
      const [workbook, { toCsv }] = await Promise.all([ready, import("../../../workbook/csv")]);
      await workbook.finishEditing();
      const { sheet, cells } = workbook.activeSheetWithDates();
      const name = `${sheet}.csv`;
      download(toCsv(cells), CSV, name);
      return [`Saved the values of "${sheet}" as ${name} in your downloads, without formulas and formats.`];
    },
    saveTable: async (name, table) => {
      const { toCsv } = await import("../../../workbook/csv");
      download(toCsv(table), CSV, `${name}.csv`);
      return [`Saved as ${name}.csv in your downloads.`];
    },
    save: async ({ onStage, signal }) => {
      const workbook = await ready;
      // The browser lets a page ask only shortly after a click, so this comes before everything that takes time.
      const target = await chooseTarget(base?.name ?? USUAL_NAME);
      onStage({ words: "Waiting for the calculation", canCancel: true });
      await workbook.finishEditing();
      await workbook.settled();
      signal.throwIfAborted();
      onStage({ words: "Writing the file", canCancel: true });
      const { bytes, lastEdit, isUnchanged, lostPictures } = await write(workbook, signal);
      await target.write(new Uint8Array(bytes));
      savedEdit = lastEdit;
      savedName = target.name;
      for (const listener of savedListeners) listener();
      return [
        isUnchanged
          ? `Nothing has changed: ${target.name} is the same file, byte for byte.`
          : `Saved as ${target.name} ${target.where}.`,
        ...(lostPictures > 0 ? [`Not in the file: ${counted(lostPictures, "picture")} inserted here.`] : []),
      ];
    },
  };
};
