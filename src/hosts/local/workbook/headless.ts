import {
  ICommandService,
  LocaleType,
  LogLevel,
  Univer,
  UniverInstanceType,
  type Injector,
  type IUnitRange,
  type IWorkbookData,
  type Workbook,
} from "@univerjs/core";
import {
  ActiveDirtyManagerService,
  IActiveDirtyManagerService,
  SetFormulaCalculationStartMutation,
  UniverFormulaEnginePlugin,
} from "@univerjs/engine-formula";
import { SetRangeValuesMutation, UniverSheetsPlugin } from "@univerjs/sheets";
import { FormulaCalculationSessionService, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import type { Cell } from "../../../../shared/cell";
import type { Area, SheetCellAddress } from "../../../workbook/address";
import type { Contents } from "../../../workbook/contents";
import type { Survey } from "../../../workbook/survey";
import type { CellPatch, Undo } from "../../../workbook/patch";
import type { WorkbookPlan } from "../../../workbook/plan";
import type { ProgressMonitor } from "../../../workbook/progressMonitor";
import type { Book } from "../../../xlsx/book/book";
import { bookSnapshot } from "../book/bookSnapshot";
import { readContents } from "../cells/contents";
import { toCellData, type CellInput } from "../engine/cellData";
import { dropDownRules } from "../engine/dropDowns";
import { evaluateFormula, type Evaluation } from "../formulas/evaluateFormula";
import { functionClasses } from "../formulas/engineFunctions";
import { dropLateResults } from "../engineFixes/lateResults";
import type { CustomFunction } from "../formulas/customFunction";
import { recordErrorMessages } from "../formulas/errorMessageRuntime";
import { ErrorMessages } from "../engine/errorMessages";
import { putCells } from "../cells/putCells";
import { readBook } from "../book/readBook";
import { readCell } from "../cells/readSheet";
import { survey } from "../cells/survey";
import { registerTables } from "../formulas/fileTables";
import { applyFixesBeforeStart } from "../engineFixes/applyBeforeStart";
import { workbookData } from "../engine/planSnapshot";

export interface HeadlessEngine {
  /** One formula on its own. It may refer to the loaded workbook (after `calculated`), and is in no cell of it. */
  evaluate(formula: string): Promise<Evaluation>;
  setCell(address: SheetCellAddress, content: CellInput): void;
  /** Resolves when every formula agrees with what was set before the call. */
  calculated(): Promise<void>;
  getCell(address: SheetCellAddress): Cell;
  /** Every sheet as it stands; ask after `calculated`. */
  contents(): Contents;
  /** A sheet as it would be with this selection. */
  survey(sheet: string, selected: Area): Survey;
  /** Writes into blank cells, all or none. */
  putCells(patch: CellPatch, run?: ProgressMonitor): Promise<Undo>;
  /** The engine's own, for what this interface doesn't say. */
  readonly injector: Injector;
  readonly workbook: Workbook;
  /** The whole workbook as plain values; ask after `calculated`. */
  book(): Book;
  dispose(): void;
}

/** The engine's own habit is to wait a tenth of a second after an edit and then calculate; this host calculates when asked. */
class NeverOnItsOwn extends ActiveDirtyManagerService {
  override get(): undefined {
    return undefined;
  }
}

/** Evaluating needs a workbook to be in, even an empty one. */
const EMPTY: WorkbookPlan = {
  sheets: [{ name: "Sheet1", cells: [], columnWidths: [], rowHeights: {}, frozenRows: 0 }],
  names: [],
};

const editsTold = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

/** The library keeps some of its caches for the whole process, by workbook: each needs an id of its own. */
let enginesMade = 0;

/** An engine with a workbook in it, made of a plan or a file's book. Another workbook takes another engine: this one keeps traces of what it unloads. */
export const createHeadlessEngine = (
  catalog: readonly CustomFunction[],
  plan: WorkbookPlan | Book = EMPTY,
): HeadlessEngine => {
  applyFixesBeforeStart();
  const errorMessages = new ErrorMessages();
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: {} },
    logLevel: LogLevel.SILENT,
  });
  univer.registerPlugins([
    [UniverFormulaEnginePlugin, { function: functionClasses(catalog, errorMessages) }],
    [UniverSheetsPlugin],
    [UniverSheetsFormulaPlugin, {}],
  ]);
  const injector = univer.__getInjector();
  recordErrorMessages(injector, errorMessages);
  injector.replace([IActiveDirtyManagerService, { useClass: NeverOnItsOwn }]);

  const id = `workbook-${++enginesMade}`;
  const snapshot = "styles" in plan ? bookSnapshot(id, plan) : workbookData(id, plan);
  registerTables(injector, snapshot);
  const workbook = univer.createUnit<IWorkbookData, Workbook>(UniverInstanceType.UNIVER_SHEET, snapshot);
  dropLateResults(injector);
  let everythingIsDirty = true;
  let dirty: IUnitRange[] = [];

  const sheetOf = ({ sheet }: Pick<SheetCellAddress, "sheet">) => {
    const found = workbook.getSheetBySheetName(sheet);
    if (!found) throw new Error(`There is no sheet "${sheet}" in the workbook.`);
    return found;
  };

  const calculate = async (): Promise<void> => {
    if (!everythingIsDirty && dirty.length === 0) return;
    const applied = injector.get(FormulaCalculationSessionService).waitForLatestApplied();
    const request = {
      forceCalculation: everythingIsDirty,
      dirtyRanges: dirty,
      dirtyNameMap: {},
      dirtyDefinedNameMap: {},
      dirtyUnitFeatureMap: {},
      dirtyUnitOtherFormulaMap: {},
      clearDependencyTreeCache: {},
      options: null,
    };
    everythingIsDirty = false;
    dirty = [];
    injector
      .get(ICommandService)
      .syncExecuteCommand(SetFormulaCalculationStartMutation.id, request, { onlyLocal: true });
    await applied;
  };

  // The engine resets its runtime at the start of each calculation, even under one that still runs: one at a time.
  let running: Promise<void> = Promise.resolve();
  const calculated = (): Promise<void> => {
    // An edit tells the engine a little later that a formula has come. A calculation that has begun by then would have it
    // forget the new formula for the old one, and complain of it ("Dependency tree not found") ever after.
    running = running.then(editsTold).then(calculate);
    return running;
  };

  const evaluate = async (formula: string): Promise<Evaluation> => {
    await running;
    return evaluateFormula(injector, workbook, errorMessages, formula);
  };

  const setCell = (address: SheetCellAddress, content: CellInput): void => {
    const params = {
      unitId: workbook.getUnitId(),
      subUnitId: sheetOf(address).getSheetId(),
      cellValue: { [address.row]: { [address.column]: toCellData(content) } },
    };
    injector.get(ICommandService).syncExecuteCommand(SetRangeValuesMutation.id, params);
  };

  injector.get(ICommandService).onCommandExecuted((command, options) => {
    // Results that a calculation puts into cells come the same way, marked as local.
    if (command.id !== SetRangeValuesMutation.id || options?.onlyLocal) return;
    // The engine knows more than the cell itself: a spill that this edit blocks or frees is dirty too.
    const conversion = injector.get(IActiveDirtyManagerService).getDirtyConversionMap().get(command.id);
    dirty.push(...(conversion?.getDirtyData(command).dirtyRanges ?? []));
  });

  const getCell = (address: SheetCellAddress): Cell =>
    readCell(injector, errorMessages, sheetOf(address), address.row, address.column);

  const surveyOf = (name: string, selected: Area): Survey => {
    workbook.setActiveSheet(sheetOf({ sheet: name }));
    return survey(
      injector,
      workbook,
      (sheet, row, column) => readCell(injector, errorMessages, sheet, row, column),
      selected,
    );
  };

  // Drop-downs have no plugin here: they stay in what the workbook was made of.
  const rules = new Map(
    "styles" in plan ? [] : plan.sheets.map((sheet) => [sheet.name, dropDownRules(sheet)]),
  );
  const book = (): Book =>
    readBook(
      injector,
      workbook,
      errorMessages,
      (sheetId) => rules.get(workbook.getSheetBySheetId(sheetId)?.getName() ?? "") ?? [],
    );

  return {
    contents: () =>
      readContents(injector, workbook, (sheet, row, column) =>
        readCell(injector, errorMessages, sheet, row, column),
      ),
    evaluate,
    setCell,
    calculated,
    getCell,
    survey: surveyOf,
    putCells: (patch, run) => putCells(injector, workbook, patch, { run }),
    injector,
    workbook,
    book,
    dispose: () => univer.dispose(),
  };
};
