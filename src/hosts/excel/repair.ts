import { NAMESPACE } from "../../namespace";
import type { Area, Place } from "../../sheets/address";
import { refuseChanged } from "../../sheets/patch";
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

/** Formulas for cells, in their order, and how many of those show #NAME? even so. */
interface Entered {
  /** As Excel keeps them. */
  readonly formulas: readonly unknown[];
  readonly stillUnknown: number;
}

const cellsOf = ({ workbook }: Excel.RequestContext, places: readonly Lost[]): Excel.Range[] =>
  places.map(({ sheetId, row, column }) =>
    workbook.worksheets.getItem(sheetId).getRangeByIndexes(row, column, 1, 1),
  );

const formulaIn = ({ formulas }: Excel.Range): unknown => (formulas as unknown[][])[0]?.[0];

const formulasNow = (excel: ExcelEntry, places: readonly Lost[]): Promise<unknown[]> =>
  excel.run(async (context) => {
    const cells = cellsOf(context, places);
    for (const cell of cells) cell.load("formulas");
    await context.sync();
    return cells.map(formulaIn);
  });

/** Enters a formula into each of some cells in one go, and calculates. */
const enter = (
  excel: ExcelEntry,
  lost: readonly Lost[],
  written: (formula: string) => string,
): Promise<Entered> =>
  excel.run(async (context) => {
    const { application } = context.workbook;
    application.suspendScreenUpdatingUntilNextSync();
    const cells = cellsOf(context, lost);
    cells.forEach((cell, index) => {
      cell.formulas = [[written(lost[index]?.formula ?? "")]];
    });
    application.calculate("Full");
    for (const cell of cells) cell.load("formulas,values");
    await context.sync();
    return {
      formulas: cells.map(formulaIn),
      stillUnknown: cells.filter(({ values }) => values[0]?.[0] === UNKNOWN_NAME).length,
    };
  });

/** Every formula of ours that shows #NAME?, and the sheets whose can't be entered. */
const lookThrough = async (
  excel: ExcelEntry,
  { onProgress, signal }: LongRun,
): Promise<{ found: Lost[]; protectedSheets: string[] }> => {
  const sheets = await readUsed(excel);
  const slices = sheets.flatMap((sheet) => sheet.slices.map((slice) => ({ sheet, slice })));
  const found: Lost[] = [];
  const protectedSheets = new Set<string>();
  for (const [index, { sheet, slice }] of slices.entries()) {
    signal.throwIfAborted();
    const lost = await lostIn(excel, sheet.sheetId, slice);
    if (!sheet.isProtected) found.push(...lost);
    else if (lost.length > 0) protectedSheets.add(sheet.name);
    onProgress((index + 1) / slices.length);
  }
  signal.throwIfAborted();
  return { found, protectedSheets: [...protectedSheets] };
};

/** Enters again every formula of ours that shows #NAME?, calculates, and says what came of it. */
export const repair = async (excel: ExcelEntry, run: LongRun = UNWATCHED): Promise<Repaired> => {
  const { found, protectedSheets } = await lookThrough(excel, run);
  // A person may have typed meanwhile.
  const now = await formulasNow(excel, found);
  const lost = found.filter(({ formula }, index) => formula === now[index]);
  if (lost.length === 0) return { entered: 0, stillUnknown: 0, protectedSheets };
  const back = async (): Promise<void> => {
    await enter(excel, lost, (formula) => formula);
  };
  const { formulas, stillUnknown } = await allOrNothing(
    () => enter(excel, lost, (formula) => formula.replace(AS_SAVED, `${NAMESPACE}.`)),
    back,
  );
  return {
    entered: lost.length,
    stillUnknown,
    protectedSheets,
    undo: async () => {
      const standing = await formulasNow(excel, lost);
      refuseChanged(lost.filter((_, index) => standing[index] !== formulas[index]));
      await back();
    },
  };
};
