import { ICommandService, ThemeService, type Injector, type Workbook, type Worksheet } from "@univerjs/core";
import { DataValidationModel } from "@univerjs/data-validation";
import { MessageType } from "@univerjs/design";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";
import { RemoveSheetConfirmCommand, RenameSheetOperation } from "@univerjs/sheets-ui";
import { IMessageService } from "@univerjs/ui";
import type { Matrix } from "../../../../shared/cell";
import type { SheetCellAddress } from "../../../workbook/address";
import type { Contents } from "../../../workbook/contents";
import type { ExistingWithActive, SheetPicture } from "../../../workbook/host";
import type { ActiveSheet } from "../../../workbook/activeSheet";
import type { ProgressMonitor } from "../../../workbook/progressMonitor";
import type { CellPatch, Undo } from "../../../workbook/patch";
import type { WorkbookPlan } from "../../../workbook/plan";
import type { Survey } from "../../../workbook/survey";
import type { Book } from "../../../xlsx/book/book";
import type { SheetMoves } from "../../../xlsx/book/rowColumnMoves";
import { readBook } from "../book/readBook";
import { addSheets } from "../cells/addSheets";
import { readContents } from "../cells/contents";
import { putCells } from "../cells/putCells";
import { datesAsText, readCell, readActiveSheet, readNamedRange, type ReadCell } from "../cells/readSheet";
import { survey } from "../cells/survey";
import { definedNamesIn } from "../engine/definedNames";
import type { ErrorMessages } from "../engine/errorMessages";
import { watchStructuralEdits } from "../engine/structuralEdits";
import { finishEditing } from "../engineFixes/finishEditing";
import { restoreTabName } from "../engineFixes/sheetTabName";
import { addPicture } from "../pictures/addPicture";
import { readPictures, type Pictures } from "../pictures/savedPictures";
import { makeFilePicturesViewOnly } from "../pictures/viewOnlyPictures";
import { protectSheets } from "../protection/protectedSheets";
import { protectSealedSheets } from "../protection/sealedSheets";
import { firstPaint } from "./firstPaint";
import { readShownCell, type ShownCell } from "./shownCell";
import { lastEdit } from "./lastEdit";
import { workbookEvents, type WorkbookEvents } from "./workbookEvents";
import { createWriteQueue } from "./writeQueue";

interface WorkbookReading {
  getCell(address: SheetCellAddress): ShownCell;
  existing(): ExistingWithActive;
  /** The active sheet as it shows. */
  activeSheet(): ActiveSheet;
  /** The active sheet with its dates as text. */
  activeSheetWithDates(): ActiveSheet;
  /** The cells of a defined name. */
  namedRange(name: string): Matrix | undefined;
  contents(): Contents;
  survey(): Survey;
}

interface WorkbookSaving {
  /** The whole workbook as plain values. */
  book(): Book;
  /** The rows, columns and blocks that were inserted, deleted or moved on each sheet. */
  movesBySheet(): ReadonlyMap<string, SheetMoves>;
  /** The pictures that were inserted on sheets here. */
  pictures(): Promise<Pictures>;
  /** The last edit that Undo would take back: it differs whenever the workbook differs from what it was. */
  lastEdit(): unknown;
}

interface WorkbookWriting {
  putPicture(picture: SheetPicture): Promise<Undo>;
  /** Adds all of a plan's sheets and names, or none. */
  addSheets(plan: WorkbookPlan): Promise<Undo>;
  /** Writes all of a patch into blank cells, or nothing, piece by piece; each piece is calculated before the next. */
  putCells(patch: CellPatch, run?: ProgressMonitor): Promise<Undo>;
  /** Resolves when no card of the pane is writing. */
  written(): Promise<void>;
  /** Waits until nothing is being written, commits the cell that is being edited, and waits for its results. */
  finishEditing(): Promise<void>;
  /** Resolves when no calculation runs, and none is about to. */
  settled(): Promise<void>;
  close(): void;
}

/** The workbook on the page. */
export interface PageWorkbook extends WorkbookReading, WorkbookSaving, WorkbookWriting, WorkbookEvents {
  setDarkMode(dark: boolean): void;
  /** Resolves when everything has been calculated for the first time. */
  readonly calculated: Promise<void>;
  /** Resolves when the grid has been drawn for the first time. */
  readonly painted: Promise<void>;
}

/** The engine starts a calculation a tenth of a second after an edit. If none has started by then, none will. */
const LONGEST_BEFORE_CALCULATION_MS = 250;

type Tell = (message: string) => void;

/** Stops edits of protected sheets and the deletion of sealed ones, with a message. */
const protect = (injector: Injector, workbook: Workbook, read: ReadCell, tell: Tell): void => {
  protectSheets(injector, workbook, tell);
  protectSealedSheets(injector, workbook, {
    deletionId: RemoveSheetConfirmCommand.id,
    renameId: RenameSheetOperation.id,
    restoreTabName: (sheet) => {
      restoreTabName(injector.get(ICommandService), workbook, sheet);
    },
    read,
    tell,
  });
};

const reading = (injector: Injector, workbook: Workbook, read: ReadCell): WorkbookReading => ({
  getCell: (address) => {
    const sheet = workbook.getSheetBySheetName(address.sheet);
    if (!sheet) throw new Error(`There is no sheet "${address.sheet}" in the workbook.`);
    return readShownCell(injector, workbook, read, sheet, address);
  },
  existing: () => ({
    sheets: workbook.getSheets().map((sheet) => sheet.getName()),
    names: definedNamesIn(injector, workbook).map(({ name }) => name),
    activeSheetName: workbook.getActiveSheet().getName(),
  }),
  activeSheet: () => readActiveSheet(injector, workbook, read),
  activeSheetWithDates: () => readActiveSheet(injector, workbook, datesAsText(workbook, read)),
  namedRange: (name) => readNamedRange(injector, workbook, read, name),
  contents: () => readContents(injector, workbook, read),
  survey: () => survey(injector, workbook, read),
});

const saving = (injector: Injector, workbook: Workbook, errorMessages: ErrorMessages): WorkbookSaving => {
  const movesBySheetId = watchStructuralEdits(injector.get(ICommandService));
  return {
    book: () =>
      readBook(injector, workbook, errorMessages, (sheetId) =>
        injector.get(DataValidationModel).getRules(workbook.getUnitId(), sheetId),
      ),
    movesBySheet: () =>
      new Map(
        [...movesBySheetId()].flatMap(([id, moves]): [string, SheetMoves][] => {
          const sheet = workbook.getSheetBySheetId(id);
          return sheet ? [[sheet.getName(), moves]] : [];
        }),
      ),
    pictures: () => readPictures(injector, workbook),
    lastEdit: () => lastEdit(injector, workbook),
  };
};

const writing = (
  injector: Injector,
  workbook: Workbook,
  tell: Tell,
  dispose: () => void,
): WorkbookWriting => {
  const queue = createWriteQueue();
  const settled = (): Promise<void> =>
    injector
      .get(FormulaCalculationSessionService)
      .waitForLatestApplied(undefined, LONGEST_BEFORE_CALCULATION_MS);
  return {
    putPicture: (picture) => queue.add(addPicture(injector, workbook, picture)),
    addSheets: (plan) => queue.add(addSheets(injector, workbook, plan)),
    putCells: (patch, run) => queue.add(putCells(injector, workbook, patch, { run, rest: settled, tell })),
    written: () => queue.idle(),
    finishEditing: async () => {
      await queue.idle();
      await finishEditing(injector, workbook.getUnitId());
    },
    settled,
    close: () => {
      queue.close();
      dispose();
    },
  };
};

/** The engine's workbook as the page uses it; `dispose` ends the engine. */
export const openWorkbook = (
  injector: Injector,
  workbook: Workbook,
  errorMessages: ErrorMessages,
  dispose: () => void,
): PageWorkbook => {
  const calculated = injector.get(FormulaCalculationSessionService).waitForLatestApplied();
  const read: ReadCell = (sheet, row, column) => readCell(injector, errorMessages, sheet, row, column);
  const tell: Tell = (content) => {
    injector.get(IMessageService).show({ content, type: MessageType.Warning });
  };
  makeFilePicturesViewOnly(injector);
  protect(injector, workbook, read, tell);
  return {
    ...reading(injector, workbook, read),
    ...saving(injector, workbook, errorMessages),
    ...writing(injector, workbook, tell, dispose),
    ...workbookEvents(injector, workbook, (sheet: Worksheet, address) =>
      readShownCell(injector, workbook, read, sheet, address),
    ),
    setDarkMode: (dark) => injector.get(ThemeService).setDarkMode(dark),
    calculated,
    painted: firstPaint(injector, workbook.getUnitId()),
  };
};
