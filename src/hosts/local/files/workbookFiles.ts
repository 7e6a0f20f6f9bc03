import { counted } from "../../../../shared/describe";
import type { WorkbookFiles } from "../../../pane/parts/paneHost";
import type { Book, BookSheet } from "../../../xlsx/book/book";
import { differingResults } from "../../../xlsx/write/cachedResults";
import type { canBeDrawn } from "../pictures/decodedImage";
import type { download } from "./download";
import { withoutDamagedPictures } from "./damagedPictures";
import type { FileWork } from "./fileWork";
import type { PageWorkbook } from "../workbook/pageWorkbook";

const XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
const CSV = "text/csv;charset=utf-8";
const USUAL_NAME = "Gablewright.xlsx";
/** As many cells as someone would check. */
const MOST_LISTED = 5;

/** The file that the workbook on the page came from. */
interface OpenedFile {
  readonly name: string;
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
  readonly work: FileWork;
  readonly canBeDrawn: typeof canBeDrawn;
  readonly download: typeof download;
}

/** What a save compares with: without the pictures, which may be large and stay in the file anyway. */
const withoutPictures = (book: Book): Book => ({
  ...book,
  sheets: book.sheets.map((sheet) => ({ ...sheet, filePictures: [] })),
});

/** Opens and saves files. */
export const workbookFiles = (
  ready: Promise<PageWorkbook>,
  { show, work, canBeDrawn, download }: FileTools,
): WorkbookFiles => {
  let base: OpenedFile | undefined;
  let savedSteps = 0;

  return {
    hasUnsaved: async () => {
      const workbook = await ready;
      await workbook.finishEditing();
      return workbook.steps() !== savedSteps;
    },
    open: async (chosen, { onStage, signal }) => {
      onStage({ words: "Reading the file", canCancel: true });
      const before = await ready;
      const steps = before.steps();
      const bytes = new Uint8Array(await chosen.arrayBuffer());
      const { book: read, notShown } = await work.read(bytes, signal);
      const { book: shown, damaged } = await withoutDamagedPictures(read, canBeDrawn, signal);
      signal.throwIfAborted();
      await before.finishEditing();
      if (before.steps() !== steps)
        throw new Error(
          `The workbook was changed while ${chosen.name} was being read, so the file wasn't opened. Save the workbook, or open the file again.`,
        );
      onStage({ words: "Showing and calculating the workbook", canCancel: false });
      // From here on, the workbook on the page no longer comes from the file that was open before, even if this fails.
      base = undefined;
      savedSteps = 0;
      const workbook = await show(shown);
      await workbook.calculated;
      const inFile = withoutPictures(read);
      const calculated = workbook.book();
      base = { name: chosen.name, bytes, inFile, calculated, doubtful: differingResults(inFile, calculated) };
      savedSteps = workbook.steps();
      const { brokenSeals } = await import("../../../sheets/sealCheck/brokenSeals");
      return {
        said: openedInWords(base, [...notShown, ...damagedInWords(damaged)]),
        warnings: brokenSeals(workbook.contents()),
      };
    },
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
      onStage({ words: "Waiting for the calculation", canCancel: true });
      await workbook.finishEditing();
      await workbook.settled();
      signal.throwIfAborted();
      onStage({ words: "Writing the file", canCancel: true });
      // Edits made while the file is being written aren't in it.
      const steps = workbook.steps();
      const book = workbook.book();
      const movesBySheet = workbook.movesBySheet();
      const { bySheet, lost } = await workbook.pictures();
      const picturesOn = (sheet: string): Pick<BookSheet, "pictures"> => {
        const pictures = bySheet.get(sheet);
        return pictures ? { pictures } : {};
      };
      const { changed } = await work.write(
        {
          ...(base && { from: { bytes: base.bytes, inFile: base.inFile, calculated: base.calculated } }),
          now: { ...book, sheets: book.sheets.map((sheet) => ({ ...sheet, ...picturesOn(sheet.name) })) },
          options: {
            movesBySheet,
            hasDifferingResults: (base?.doubtful.length ?? 0) > 0,
          },
        },
        signal,
      );
      const bytes = changed ?? base?.bytes;
      if (!bytes) throw new Error("There is nothing to save.");
      const name = base?.name ?? USUAL_NAME;
      download(new Uint8Array(bytes), XLSX, name);
      savedSteps = steps;
      return [
        changed === undefined
          ? `Nothing has changed: ${name} is the same file, byte for byte.`
          : `Saved as ${name} in your downloads.`,
        ...(lost > 0 ? [`Not in the file: ${counted(lost, "picture")} inserted here.`] : []),
      ];
    },
  };
};
