import {
  ICommandService,
  IUndoRedoService,
  LifecycleService,
  LifecycleStages,
  ThemeService,
  type Injector,
  type Workbook,
  type Worksheet,
} from "@univerjs/core";
import { DataValidationModel } from "@univerjs/data-validation";
import { IRenderManagerService } from "@univerjs/engine-render";
import {
  SetRangeValuesMutation,
  SetWorksheetActiveOperation,
  SetWorksheetNameMutation,
  SheetsSelectionsService,
} from "@univerjs/sheets";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";
import { RemoveSheetConfirmCommand, RenameSheetOperation } from "@univerjs/sheets-ui";
import { MessageType } from "@univerjs/design";
import { IMessageService } from "@univerjs/ui";
import { filter, firstValueFrom } from "rxjs";
import { CellError, type Cell, type Matrix } from "../../../../shared/cell";
import type { WorkbookPlan } from "../../../workbook/plan";
import type { Contents } from "../../../workbook/contents";
import type { SheetInView } from "../../../workbook/inView";
import type { ExistingInView, SheetPicture } from "../../../workbook/host";
import type { LongRun } from "../../../workbook/longRun";
import type { Survey } from "../../../workbook/survey";
import type { SheetCellAddress } from "../../../workbook/address";
import type { CellPatch, Undo } from "../../../workbook/patch";
import type { Book } from "../../../xlsx/book/book";
import type { SheetMoves } from "../../../xlsx/book/lineMoves";
import { addPicture } from "../pictures/addPicture";
import { addSheets } from "../cells/addSheets";
import { cellDataAt, fromCellData, type CellInput } from "../engine/cellData";
import { readContents } from "../cells/contents";
import { errorOrigin } from "../cells/errorOrigin";
import { finishEditing } from "../engineFixes/finishEditing";
import { dropLateResults } from "../engineFixes/lateResults";
import { makeFilePicturesViewOnly } from "../pictures/viewOnlyPictures";
import { createWriteQueue } from "./writeQueue";
import { definedNamesIn } from "../engine/definedNames";
import { readPictures, type Pictures } from "../pictures/savedPictures";
import { skipDeletedSheets } from "../engineFixes/deletedSheetValidation";
import { putCells } from "../cells/putCells";
import { protectSealedSheets } from "../protection/sealedSheets";
import { restoreTabName } from "../engineFixes/sheetTabName";
import { deleteSheetsCompletely } from "../engineFixes/sheetDeletion";
import { readBook } from "../book/readBook";
import { watchStructuralEdits } from "../engine/structuralEdits";
import { protectSheets } from "../protection/protectedSheets";
import { datesAsText, readCell, readInView, readNamed } from "../cells/readSheet";
import type { ErrorMessages } from "../engine/errorMessages";
import { formulaAt, survey } from "../cells/survey";

/** A cell as a person sees it: what it shows, the formula behind it, and the sentence that explains its error. */
export interface ShownCell extends SheetCellAddress {
  readonly value: CellInput;
  /** Of numbers; blank where it has none. */
  readonly format: string;
  readonly formula: string;
  readonly errorMessage: string;
}

export type Stop = () => void;

export interface PageWorkbook {
  getCell(address: SheetCellAddress): ShownCell;
  existing(): ExistingInView;
  inView(): SheetInView;
  /** The sheet in front with its dates as text. */
  inViewDated(): SheetInView;
  named(name: string): Matrix | undefined;
  contents(): Contents;
  putPicture(picture: SheetPicture): Promise<Undo>;
  /** Adds a plan's sheets and names, all or none. */
  write(plan: WorkbookPlan): Promise<Undo>;
  survey(): Survey;
  /** Writes into blank cells piece by piece, all or none; each piece is calculated before the next. */
  put(patch: CellPatch, run?: LongRun): Promise<Undo>;
  setDarkMode(dark: boolean): void;
  /** Waits until nothing is being put, takes what is being typed into a cell, and waits for its results. */
  finishEditing(): Promise<void>;
  /** Resolves when no calculation runs, and none is about to. */
  settled(): Promise<void>;
  /** The whole workbook as plain values. */
  book(): Book;
  /** What was moved on which sheets. */
  movesBySheet(): ReadonlyMap<string, SheetMoves>;
  /** The pictures that were put on sheets. */
  pictures(): Promise<Pictures>;
  /** How many steps Undo could go back. */
  steps(): number;
  close(): void;
  /** The active cell, now and whenever the selection comes to rest. */
  onSelection(listener: (cell: ShownCell) => void): Stop;
  /** After a change of cells, by an edit or by a calculation. */
  onChange(listener: () => void): Stop;
  /** After each calculation, when its results are in the cells. */
  onCalculated(listener: () => void): Stop;
  /** Resolves when everything has been calculated for the first time. */
  readonly calculated: Promise<void>;
  /** Resolves when the grid has been drawn for the first time. */
  readonly painted: Promise<void>;
}

/** The engine begins a tenth of a second after an edit; where it hasn't by then, nothing is to be calculated. */
const LONGEST_BEFORE_CALCULATION_MS = 250;

export const openWorkbook = (
  injector: Injector,
  workbook: Workbook,
  errorMessages: ErrorMessages,
  close: () => void,
): PageWorkbook => {
  const commands = injector.get(ICommandService);
  const unitId = workbook.getUnitId();

  skipDeletedSheets(injector);
  makeFilePicturesViewOnly(injector);
  dropLateResults(injector);
  const movesById = watchStructuralEdits(commands);
  const tell = (content: string): void => {
    injector.get(IMessageService).show({ content, type: MessageType.Warning });
  };
  protectSheets(injector, workbook, tell);
  deleteSheetsCompletely(injector, workbook);
  const calculations = injector.get(FormulaCalculationSessionService);
  const calculated = calculations.waitForLatestApplied();
  const settled = (): Promise<void> =>
    calculations.waitForLatestApplied(undefined, LONGEST_BEFORE_CALCULATION_MS);
  const writes = createWriteQueue();
  let steps = 0;
  injector.get(IUndoRedoService).undoRedoStatus$.subscribe(({ undos }) => {
    steps = undos;
  });

  const read = (sheet: Worksheet, row: number, column: number): Cell =>
    readCell(injector, errorMessages, sheet, row, column);

  protectSealedSheets(injector, workbook, {
    deletionId: RemoveSheetConfirmCommand.id,
    renameId: RenameSheetOperation.id,
    showName: (sheet) => {
      restoreTabName(commands, workbook, sheet);
    },
    read,
    tell,
  });

  const sheetOf = (name: string): Worksheet => {
    const found = workbook.getSheetBySheetName(name);
    if (!found) throw new Error(`There is no sheet "${name}" in the workbook.`);
    return found;
  };

  const shown = (sheet: Worksheet, row: number, column: number): ShownCell => {
    const cell = cellDataAt(injector, sheet, row, column);
    const value = read(sheet, row, column);
    const errorMessage =
      value instanceof CellError ? errorOrigin(injector, workbook, read, { sheet, row, column }) : "";
    return {
      sheet: sheet.getName(),
      row,
      column,
      value: fromCellData(cell),
      format: workbook.getStyles().get(cell?.s)?.n?.pattern ?? "",
      formula: formulaAt(injector, sheet, row, column),
      errorMessage,
    };
  };

  const onSelection: PageWorkbook["onSelection"] = (listener) => {
    const selections = injector.get(SheetsSelectionsService);
    const tell = (): void => {
      // On a sheet that comes to the front for the first time nothing has been selected: its first cell is, then.
      const active = selections.getCurrentSelections().at(-1)?.primary;
      listener(shown(workbook.getActiveSheet(), active?.actualRow ?? 0, active?.actualColumn ?? 0));
    };
    tell();
    const subscription = selections.selectionChanged$.subscribe(tell);
    // A sheet that comes to the front brings its own selection, which then hasn't changed, and one that is renamed keeps it.
    const sheets = commands.onCommandExecuted(({ id }) => {
      if (id === SetWorksheetActiveOperation.id || id === SetWorksheetNameMutation.id) tell();
    });
    return () => {
      subscription.unsubscribe();
      sheets.dispose();
    };
  };

  const onChange: PageWorkbook["onChange"] = (listener) => {
    const subscription = commands.onCommandExecuted(({ id }) => {
      if (id === SetRangeValuesMutation.id) listener();
    });
    return () => {
      subscription.dispose();
    };
  };

  const onCalculated: PageWorkbook["onCalculated"] = (listener) => {
    const subscription = calculations.resultApplied$.subscribe(() => listener());
    return () => subscription.unsubscribe();
  };

  const paint = async (): Promise<void> => {
    await injector.get(LifecycleService).onStage(LifecycleStages.Rendered);
    const render = injector.get(IRenderManagerService).getRenderById(unitId);
    if (!render) throw new Error("The grid has no renderer.");
    // The first frames after mounting may come before the canvas has a size.
    await firstValueFrom(render.engine.endFrame$.pipe(filter(() => render.engine.width > 0)));
    // The frame is on the canvas; the browser shows it at its own next frame.
    await new Promise((resolve) => requestAnimationFrame(resolve));
  };

  return {
    getCell: ({ sheet, row, column }) => shown(sheetOf(sheet), row, column),
    existing: () => ({
      sheets: workbook.getSheets().map((sheet) => sheet.getName()),
      names: definedNamesIn(injector, workbook).map(({ name }) => name),
      inFront: workbook.getActiveSheet().getName(),
    }),
    inView: () => readInView(injector, workbook, read),
    inViewDated: () => readInView(injector, workbook, datesAsText(workbook, read)),
    contents: () => readContents(injector, workbook, read),
    named: (name) => readNamed(injector, workbook, read, name),
    putPicture: (picture) => writes.keep(addPicture(injector, workbook, picture)),
    write: (plan) => writes.keep(addSheets(injector, workbook, plan)),
    survey: () => survey(injector, workbook, read),
    put: (patch, run) => writes.keep(putCells(injector, workbook, patch, { run, rest: settled, tell })),
    finishEditing: async () => {
      await writes.done();
      await finishEditing(injector, unitId);
    },
    settled,
    setDarkMode: (dark) => injector.get(ThemeService).setDarkMode(dark),
    book: () =>
      readBook(injector, workbook, errorMessages, (sheetId) =>
        injector.get(DataValidationModel).getRules(unitId, sheetId),
      ),
    movesBySheet: () =>
      new Map(
        [...movesById()].flatMap(([id, moves]): [string, SheetMoves][] => {
          const sheet = workbook.getSheetBySheetId(id);
          return sheet ? [[sheet.getName(), moves]] : [];
        }),
      ),
    pictures: () => readPictures(injector, workbook),
    steps: () => steps,
    close: () => {
      writes.close();
      close();
    },
    calculated,
    onSelection,
    onChange,
    onCalculated,
    painted: paint(),
  };
};
