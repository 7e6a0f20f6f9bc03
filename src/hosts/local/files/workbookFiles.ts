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
/** As many places as a person would go and look at. */
const MOST_LISTED = 5;

/** The file that the workbook shown came from. */
interface Base {
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

/** What a person should know of a file that has been opened. */
const openedInWords = ({ name, doubtful, inFile }: Base, unseen: readonly string[]): string[] => [
  `Opened ${name}: ${inFile.sheets.length === 1 ? "1 sheet" : `${inFile.sheets.length} sheets`}.`,
  ...(unseen.length > 0 ? [`In the file and kept there, not shown here: ${listed(unseen)}.`] : []),
  ...(doubtful.length > 0
    ? [
        `${doubtful.length === 1 ? "1 formula gives" : `${doubtful.length} formulas give`} another result here than in the file. The file keeps its own, until a cell that ${doubtful.length === 1 ? "it reads" : "they read"} is changed here: ${firstOf(doubtful)}.`,
      ]
    : []),
];

export interface FileTools {
  /** Shows a workbook in the place of the one on the page. */
  readonly show: (book: Book) => Promise<PageWorkbook>;
  readonly work: FileWork;
  readonly canBeDrawn: typeof canBeDrawn;
  readonly download: typeof download;
}

/** What a save compares with: the file keeps its own pictures, which may be large. */
const withoutPictures = (book: Book): Book => ({
  ...book,
  sheets: book.sheets.map((sheet) => ({ ...sheet, filePictures: [] })),
});

/** Opening and saving files. */
export const workbookFiles = (
  ready: Promise<PageWorkbook>,
  { show, work, canBeDrawn, download }: FileTools,
): WorkbookFiles => {
  let base: Base | undefined;
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
          `The workbook shown was changed while ${chosen.name} was being read, so it stays: save it, or open the file again.`,
        );
      onStage({ words: "Showing and calculating the workbook", canCancel: false });
      // Whatever happens from here on, what is shown didn't come from the file that was open before.
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
      return [
        `Saved what "${sheet}" shows as ${name}, among your downloads. Formulas and looks aren't in it.`,
      ];
    },
    saveTable: async (name, table) => {
      const { toCsv } = await import("../../../workbook/csv");
      download(toCsv(table), CSV, `${name}.csv`);
      return [`Saved ${name}.csv, among your downloads.`];
    },
    save: async ({ onStage, signal }) => {
      const workbook = await ready;
      onStage({ words: "Waiting for the calculation", canCancel: true });
      await workbook.finishEditing();
      await workbook.settled();
      signal.throwIfAborted();
      onStage({ words: "Writing the file", canCancel: true });
      // What is typed while the file is being written isn't in it.
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
      if (!bytes) throw new Error("The file came out empty.");
      const name = base?.name ?? USUAL_NAME;
      download(new Uint8Array(bytes), XLSX, name);
      savedSteps = steps;
      return [
        changed === undefined
          ? `Nothing had changed: ${name} is the very same file.`
          : `Saved as ${name}, among your downloads.`,
        ...(lost > 0 ? [`Not in the file: ${counted(lost, "picture")} put on sheets here.`] : []),
      ];
    },
  };
};
