import type { WorkbookFiles } from "../../pane/paneHost";
import type { Book } from "../xlsx/book";
import type { XlsxFile } from "../xlsx/xlsxFile";
import { download } from "./download";
import type { PageWorkbook } from "./workbook";

const XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
const CSV = "text/csv;charset=utf-8";
const USUAL_NAME = "Gablewright.xlsx";
/** As many places as a person would go and look at. */
const MOST_LISTED = 5;

interface Base {
  readonly name: string;
  readonly file: XlsxFile;
  readonly calculated: Book;
  readonly doubtful: readonly string[];
}

const listed = (things: readonly string[]): string => new Intl.ListFormat("en").format(things);

const firstOf = (places: readonly string[]): string =>
  places.length <= MOST_LISTED
    ? listed(places)
    : listed([...places.slice(0, MOST_LISTED), `${places.length - MOST_LISTED} more`]);

/** What a person should know of a file that has been opened. */
const openedInWords = ({ name, doubtful, file }: Base, unseen: readonly string[]): string[] => [
  `Opened ${name}: ${file.book.sheets.length === 1 ? "1 sheet" : `${file.book.sheets.length} sheets`}.`,
  ...(unseen.length > 0 ? [`In the file and kept there, not shown here: ${listed(unseen)}.`] : []),
  ...(doubtful.length > 0
    ? [
        `${doubtful.length === 1 ? "1 formula gives" : `${doubtful.length} formulas give`} another result here than in the file. The file keeps its own, until a cell that they read is changed here: ${firstOf(doubtful)}.`,
      ]
    : []),
];

/** Opening and saving .xlsx files. What reads and writes them is loaded when it is first asked for. */
export const workbookFiles = (
  ready: Promise<PageWorkbook>,
  show: (book: Book) => Promise<PageWorkbook>,
): WorkbookFiles => {
  let base: Base | undefined;
  let savedSteps: number | undefined;

  return {
    hasUnsaved: async () => {
      const workbook = await ready;
      await workbook.finishEditing();
      return workbook.steps() !== (savedSteps ?? 0);
    },
    open: async (chosen) => {
      const [{ openXlsx }, { unseenThings }, { doubtfulResults }] = await Promise.all([
        import("../xlsx/xlsxFile"),
        import("../xlsx/unseenThings"),
        import("../xlsx/doubtfulResults"),
      ]);
      const file = openXlsx(new Uint8Array(await chosen.arrayBuffer()));
      const unseen = unseenThings(file);
      const workbook = await show(file.book);
      await workbook.calculated;
      const calculated = workbook.book();
      base = { name: chosen.name, file, calculated, doubtful: doubtfulResults(file.book, calculated) };
      savedSteps = workbook.steps();
      return openedInWords(base, unseen);
    },
    saveCsv: async () => {
      const [workbook, { toCsv }] = await Promise.all([ready, import("../csv")]);
      await workbook.finishEditing();
      const { sheet, cells } = workbook.inView();
      const name = `${sheet}.csv`;
      download(toCsv(cells), CSV, name);
      return [
        `Saved what "${sheet}" shows as ${name}, among your downloads. Formulas and looks aren't in it.`,
      ];
    },
    save: async () => {
      const [workbook, { saveXlsx }] = await Promise.all([ready, import("../xlsx/xlsxFile")]);
      await workbook.finishEditing();
      const bytes = saveXlsx(base, workbook.book(), {
        movedSheets: workbook.movedSheets(),
        hasDoubtfulResults: (base?.doubtful.length ?? 0) > 0,
      });
      const name = base?.name ?? USUAL_NAME;
      download(new Uint8Array(bytes), XLSX, name);
      savedSteps = workbook.steps();
      const pictures = workbook.pictures();
      return [
        bytes === base?.file.bytes
          ? `Nothing had changed: ${name} is the very same file.`
          : `Saved as ${name}, among your downloads.`,
        ...(pictures > 0
          ? [
              `Not in the file: ${pictures === 1 ? "the picture" : `the ${pictures} pictures`} put on sheets here.`,
            ]
          : []),
      ];
    },
  };
};
