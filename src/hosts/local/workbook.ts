import {
  ICommandService,
  LifecycleService,
  LifecycleStages,
  ThemeService,
  UndoCommand,
  type Injector,
  type Workbook,
  type Worksheet,
} from "@univerjs/core";
import { IRenderManagerService } from "@univerjs/engine-render";
import { SetRangeValuesCommand, SetRangeValuesMutation, SheetsSelectionsService } from "@univerjs/sheets";
import type { ISetRangeValuesMutationParams } from "@univerjs/sheets";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";
import { HoverManagerService } from "@univerjs/sheets-ui";
import { filter, firstValueFrom, merge } from "rxjs";
import type { WorkbookPlan } from "../../sheets/plan";
import type { Existing } from "../host";
import { addSheets, namesOf } from "./addSheets";
import { cellDataAt, fromCellData, toCellData, type Content } from "./cells";
import type { Sentences } from "./sentences";

/** Row and column count from 0; the sheet goes by its name. */
export interface CellAddress {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** A cell as a person sees it: what it shows, the formula behind it, and the sentence that explains its error. */
export interface ShownCell extends CellAddress {
  readonly value: Content;
  readonly formula: string;
  readonly sentence: string;
}

export type Stop = () => void;

export interface PageWorkbook {
  /** One edit, as if typed: it can be undone. */
  setCell(address: CellAddress, content: Content): Promise<void>;
  getCell(address: CellAddress): ShownCell;
  undo(): Promise<void>;
  existing(): Existing;
  /** Adds a plan's sheets and names, all or none. */
  write(plan: WorkbookPlan): Promise<void>;
  setDarkMode(dark: boolean): void;
  /** The active cell, whenever the selection comes to rest. */
  onSelection(listener: (cell: ShownCell) => void): Stop;
  /** The cell under the mouse, or undefined when it leaves the grid. */
  onHover(listener: (cell: ShownCell | undefined) => void): Stop;
  /** Cells whose content changed, by an edit or by a calculation. */
  onChange(listener: (cells: readonly CellAddress[]) => void): Stop;
  /** After each calculation, when its results are in the cells. */
  onCalculated(listener: () => void): Stop;
  /** Resolves when the grid has been drawn for the first time. */
  readonly painted: Promise<void>;
}

const changedCells = (params: ISetRangeValuesMutationParams, sheet: string): CellAddress[] =>
  Object.entries(params.cellValue ?? {}).flatMap(([row, columns]) =>
    Object.keys(columns ?? {}).map((column) => ({ sheet, row: Number(row), column: Number(column) })),
  );

export const openWorkbook = (injector: Injector, workbook: Workbook, sentences: Sentences): PageWorkbook => {
  const commands = injector.get(ICommandService);
  const unitId = workbook.getUnitId();

  const sheetOf = (name: string): Worksheet => {
    const found = workbook.getSheetBySheetName(name);
    if (!found) throw new Error(`There is no sheet "${name}" in the workbook.`);
    return found;
  };

  const shown = (sheet: Worksheet, row: number, column: number): ShownCell => {
    const cell = cellDataAt(injector, sheet, row, column);
    const value = fromCellData(cell);
    const place = { unitId, sheetId: sheet.getSheetId(), row, column };
    return {
      sheet: sheet.getName(),
      row,
      column,
      value,
      formula: cell?.f ?? "",
      sentence: sentences.at(place, value),
    };
  };

  const setCell = async ({ sheet, row, column }: CellAddress, content: Content): Promise<void> => {
    await commands.executeCommand(SetRangeValuesCommand.id, {
      unitId,
      subUnitId: sheetOf(sheet).getSheetId(),
      range: { startRow: row, endRow: row, startColumn: column, endColumn: column },
      value: toCellData(content),
    });
  };

  const onSelection: PageWorkbook["onSelection"] = (listener) => {
    const selections = injector.get(SheetsSelectionsService);
    // A sheet that comes to the front brings its own selection, which then hasn't changed.
    const subscription = merge(selections.selectionChanged$, workbook.activeSheet$).subscribe(() => {
      const active = selections.getCurrentSelections().at(-1)?.primary;
      if (active) listener(shown(workbook.getActiveSheet(), active.actualRow, active.actualColumn));
    });
    return () => {
      subscription.unsubscribe();
    };
  };

  const onHover: PageWorkbook["onHover"] = (listener) => {
    const subscription = injector.get(HoverManagerService).currentCell$.subscribe((hovered) => {
      const sheet = hovered && workbook.getSheetBySheetId(hovered.location.subUnitId);
      listener(sheet ? shown(sheet, hovered.location.row, hovered.location.col) : undefined);
    });
    return () => subscription.unsubscribe();
  };

  const onChange: PageWorkbook["onChange"] = (listener) => {
    const subscription = commands.onCommandExecuted((command) => {
      if (command.id !== SetRangeValuesMutation.id) return;
      const params = command.params as ISetRangeValuesMutationParams;
      const sheet = workbook.getSheetBySheetId(params.subUnitId);
      if (sheet) listener(changedCells(params, sheet.getName()));
    });
    return () => subscription.dispose();
  };

  const onCalculated: PageWorkbook["onCalculated"] = (listener) => {
    const subscription = injector
      .get(FormulaCalculationSessionService)
      .resultApplied$.subscribe(() => listener());
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
    setCell,
    getCell: ({ sheet, row, column }) => shown(sheetOf(sheet), row, column),
    undo: async () => {
      await commands.executeCommand(UndoCommand.id);
    },
    existing: () => ({
      sheets: workbook.getSheets().map((sheet) => sheet.getName()),
      names: namesOf(injector, unitId),
    }),
    write: (plan) => addSheets(injector, workbook, plan),
    setDarkMode: (dark) => injector.get(ThemeService).setDarkMode(dark),
    onSelection,
    onHover,
    onChange,
    onCalculated,
    painted: paint(),
  };
};
