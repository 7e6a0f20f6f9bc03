import {
  CustomCommandExecutionError,
  ICommandService,
  type ICellData,
  type Injector,
  type Nullable,
  type Workbook,
  type Worksheet,
} from "@univerjs/core";
import { SetRangeValuesMutation, type ISetRangeValuesMutationParams } from "@univerjs/sheets";
import { a1 } from "../../sheets/address";
import { isMove, movedSheetIdsOf } from "./moves";
import { ofFile } from "./ofFile";

/** Whether the file lets a cell be changed though its sheet is protected; a cell without a look has its row's or column's. */
const isUnlocked = (sheet: Worksheet, row: number, column: number): boolean => {
  const { rowData, columnData } = sheet.getConfig();
  const style = sheet.getCellRaw(row, column)?.s ?? rowData[row]?.s ?? columnData[column]?.s;
  return typeof style === "string" && ofFile(sheet).unlockedStyles.includes(style);
};

const firstLocked = (
  sheet: Worksheet,
  cells: Nullable<Readonly<Record<number, Readonly<Record<number, Nullable<ICellData>>>>>>,
): string | undefined => {
  for (const [row, inRow] of Object.entries(cells ?? {}))
    for (const column of Object.keys(inRow))
      if (!isUnlocked(sheet, Number(row), Number(column)))
        return a1({ row: Number(row), column: Number(column) });
  return undefined;
};

/** Stops what a person does by hand to a sheet that its file protects, and says so; results of formulas go on. */
export const protectSheets = (
  injector: Injector,
  workbook: Workbook,
  tell: (sentence: string) => void,
): void => {
  const protectedSheet = (id: string | undefined): Worksheet | undefined => {
    const sheet = id === undefined ? undefined : workbook.getSheetBySheetId(id);
    return sheet && ofFile(sheet).isProtected ? sheet : undefined;
  };
  const refuse = (sheet: Worksheet, what: string): never => {
    tell(`"${sheet.getName()}" is protected in its file: ${what}. Take the protection off in Excel first.`);
    // The engine takes this error for "no", without a word of its own.
    throw new CustomCommandExecutionError(`${sheet.getName()} is protected.`);
  };
  injector.get(ICommandService).beforeCommandExecuted(({ id, params }, options) => {
    if (options?.onlyLocal) return;
    if (id === SetRangeValuesMutation.id) {
      const { subUnitId, cellValue } = params as ISetRangeValuesMutationParams;
      const sheet = protectedSheet(subUnitId);
      const locked = sheet && firstLocked(sheet, cellValue);
      if (locked !== undefined) refuse(sheet as Worksheet, `${locked} wasn't changed`);
    } else if (isMove(id)) {
      const sheet = movedSheetIdsOf(params).map(protectedSheet).find(Boolean);
      if (sheet) refuse(sheet, "nothing was moved");
    }
  });
};
