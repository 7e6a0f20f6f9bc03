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
  /** Evaluates a formula that is in no cell. It may refer to the workbook's cells, after `calculated`. */
  evaluate(formula: string): Promise<Evaluation>;
  setCell(address: SheetCellAddress, content: CellInput): void;
  /** Resolves when every formula has been calculated with what was set before the call. */
  calculated(): Promise<void>;
  getCell(address: SheetCellAddress): Cell;
  /** Every sheet's values and formulas; call it after `calculated`. */
  contents(): Contents;
  /** A sheet's survey, with this selection. */
  survey(sheet: string, selected: Area): Survey;
  /** Writes all of a patch into blank cells, or nothing. */
  putCells(patch: CellPatch, run?: ProgressMonitor): Promise<Undo>;
  /** The engine's own objects, for what this interface doesn't offer. */
  readonly injector: Injector;
  readonly workbook: Workbook;
  /** The whole workbook as plain values; call it after `calculated`. */
  book(): Book;
  dispose(): void;
}

/** The engine calculates a tenth of a second after each edit. Here it calculates only on `calculated`. */
class NoAutomaticCalculation extends ActiveDirtyManagerService {
  override get(): undefined {
    return undefined;
  }
}

/** Evaluating a formula needs a workbook, even an empty one. */
const EMPTY: WorkbookPlan = {
  sheets: [{ name: "Sheet1", cells: [], columnWidths: [], rowHeights: {}, frozenRows: 0 }],
  names: [],
};

const editsReported = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

/** The engine keeps some caches for the whole process, by workbook id, so each workbook needs its own id. */
let enginesMade = 0;

/** An engine with one workbook, made from a plan or a file's book. Another workbook needs another engine: this one keeps traces of a workbook that it unloads. */
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
  injector.replace([IActiveDirtyManagerService, { useClass: NoAutomaticCalculation }]);

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

  // Calculations run one at a time: the engine resets its runtime when one starts, even while another runs.
  let running: Promise<void> = Promise.resolve();
  const calculated = (): Promise<void> => {
    // The engine hears of a new formula a little after the edit. If a calculation has started by then, the engine drops the
    // new formula for the old one, and reports "Dependency tree not found" from then on.
    running = running.then(editsReported).then(calculate);
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
    // The results of a calculation arrive the same way, marked as local.
    if (command.id !== SetRangeValuesMutation.id || options?.onlyLocal) return;
    // The engine adds cells to the edited ones: a spill that this edit blocks or frees is dirty too.
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

  // There is no plugin for drop-down lists here, so the rules come from the plan.
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
