import { NAMESPACE } from "../../namespace";
import type { Area, Place } from "../../sheets/address";
import type { Repaired } from "../host";
import { UNWATCHED, type LongRun } from "../longRun";
import { allOrNothing } from "./allOrNothing";
import type { ExcelEntry } from "./excelHost";
import { areaOf, PLACE_AND_SIZE, rangeOf, slicesOf } from "./ranges";

const UNKNOWN_NAME = "#NAME?";

/** How a file names our functions, where Excel has opened it before the add-in was there. (To be seen in a real save.) */
const AS_SAVED = new RegExp(`_xldudf_${NAMESPACE}_`, "gi");
const OURS = new RegExp(`\\b${NAMESPACE}\\.|_xldudf_${NAMESPACE}_`, "i");

/** A cell of ours that shows #NAME?: such a workbook was opened before the functions were there. */
interface Lost extends Place {
  readonly sheetId: string;
  readonly formula: string;
}

/** A sheet's used cells, in blocks that Excel takes at once. */
interface Used {
  readonly sheetId: string;
  readonly name: string;
  readonly isProtected: boolean;
  readonly slices: readonly Area[];
}

const readUsed = (excel: ExcelEntry): Promise<Used[]> =>
  excel.run(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/id,items/name");
    await context.sync();
    const sheets = worksheets.items.map((sheet) => ({ sheet, used: sheet.getUsedRangeOrNullObject(true) }));
    for (const { sheet, used } of sheets) {
      sheet.protection.load("protected");
      used.load(PLACE_AND_SIZE);
    }
    await context.sync();
    return sheets.map(({ sheet, used }) => ({
      sheetId: sheet.id,
      name: sheet.name,
      isProtected: sheet.protection.protected,
      slices: used.isNullObject ? [] : slicesOf(areaOf(used)),
    }));
  });

const lostIn = (excel: ExcelEntry, sheetId: string, slice: Area): Promise<Lost[]> =>
  excel.run(async (context) => {
    const range = rangeOf(context.workbook.worksheets.getItem(sheetId), slice);
    range.load("values,formulas");
    await context.sync();
    return (range.values as unknown[][]).flatMap((line, row) =>
      line.flatMap((value, column): Lost[] => {
        const formula = (range.formulas as unknown[][])[row]?.[column];
        return value === UNKNOWN_NAME && typeof formula === "string" && OURS.test(formula)
          ? [{ sheetId, row: slice.from.row + row, column: slice.from.column + column, formula }]
          : [];
      }),
    );
  });

/** Enters the cells' formulas in one go, calculates, and says how many show #NAME? even so. */
const enter = (
  excel: ExcelEntry,
  lost: readonly Lost[],
  written: (formula: string) => string,
): Promise<number> =>
  excel.run(async (context) => {
    const { worksheets, application } = context.workbook;
    application.suspendScreenUpdatingUntilNextSync();
    const cells = lost.map(({ sheetId, row, column, formula }) => {
      const cell = worksheets.getItem(sheetId).getRangeByIndexes(row, column, 1, 1);
      cell.formulas = [[written(formula)]];
      return cell;
    });
    application.calculate("Full");
    for (const cell of cells) cell.load("values");
    await context.sync();
    return cells.filter(({ values }) => values[0]?.[0] === UNKNOWN_NAME).length;
  });

/** Enters again every formula of ours that shows #NAME?, calculates, and says what came of it. */
export const repair = async (
  excel: ExcelEntry,
  { onProgress, signal }: LongRun = UNWATCHED,
): Promise<Repaired> => {
  const sheets = await readUsed(excel);
  const slices = sheets.flatMap((sheet) => sheet.slices.map((slice) => ({ sheet, slice })));
  const open: Lost[] = [];
  const protectedSheets = new Set<string>();
  for (const [index, { sheet, slice }] of slices.entries()) {
    signal.throwIfAborted();
    const found = await lostIn(excel, sheet.sheetId, slice);
    if (!sheet.isProtected) open.push(...found);
    else if (found.length > 0) protectedSheets.add(sheet.name);
    onProgress((index + 1) / slices.length);
  }
  signal.throwIfAborted();
  const back = async (): Promise<void> => {
    await enter(excel, open, (formula) => formula);
  };
  const stillUnknown =
    open.length === 0
      ? 0
      : await allOrNothing(
          () => enter(excel, open, (formula) => formula.replace(AS_SAVED, `${NAMESPACE}.`)),
          back,
        );
  return {
    entered: open.length,
    stillUnknown,
    protectedSheets: [...protectedSheets],
    ...(open.length > 0 && { undo: back }),
  };
};
