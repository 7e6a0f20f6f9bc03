import { NAMESPACE } from "../../../workbook/namespace";
import type { Area, CellAddress, SheetCellAddress } from "../../../workbook/address";
import { refuseChanged } from "../../../workbook/patch";
import type { Repaired } from "../../../workbook/host";
import { NO_MONITOR, type ProgressMonitor } from "../../../workbook/progressMonitor";
import { allOrNothing } from "./allOrNothing";
import type { ExcelEntry } from "../ranges/excelEntry";
import { grouped, rangeOf, slicesOf } from "../ranges/ranges";
import { refuseVast } from "../ranges/readInPieces";
import { usedRanges } from "../ranges/usedRanges";

const UNKNOWN_NAME = "#NAME?";

/** How a file names our functions if Excel opened it before the add-in was loaded. (To be checked in a real save.) */
const AS_SAVED = new RegExp(`_xldudf_${NAMESPACE}_`, "gi");
const OURS = new RegExp(`\\b${NAMESPACE}\\.|_xldudf_${NAMESPACE}_`, "i");

/** A cell with a function of ours that shows #NAME?, because the workbook was opened before the add-in was loaded. */
interface Lost extends CellAddress {
  readonly sheetId: string;
  readonly formula: string;
}

/** A part of a used range, small enough for one request. */
interface Slice {
  readonly sheetId: string;
  readonly name: string;
  readonly isProtected: boolean;
  readonly area: Area;
}

const readSlices = (excel: ExcelEntry): Promise<Slice[]> =>
  excel.run(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/id,items/name");
    await context.sync();
    for (const sheet of worksheets.items) sheet.protection.load("protected");
    const blocks = await usedRanges(context, worksheets.items);
    blocks.forEach(refuseVast);
    return blocks.flatMap(({ sheet, name, area }) =>
      slicesOf(area).map((slice) => ({
        sheetId: sheet.id,
        name,
        isProtected: sheet.protection.protected,
        area: slice,
      })),
    );
  });

const lostIn = (excel: ExcelEntry, { sheetId, area }: Slice): Promise<Lost[]> =>
  excel.run(async (context) => {
    const range = rangeOf(context.workbook.worksheets.getItem(sheetId), area);
    range.load("values,formulas");
    await context.sync();
    return (range.values as unknown[][]).flatMap((line, row) =>
      line.flatMap((value, column): Lost[] => {
        const formula = (range.formulas as unknown[][])[row]?.[column];
        return value === UNKNOWN_NAME && typeof formula === "string" && OURS.test(formula)
          ? [{ sheetId, row: area.from.row + row, column: area.from.column + column, formula }]
          : [];
      }),
    );
  });

/** Finds every formula of ours that shows #NAME?, and the protected sheets that have some. */
const findLost = async (
  excel: ExcelEntry,
  { onProgress, signal }: ProgressMonitor,
): Promise<{ found: Lost[]; protectedSheets: string[] }> => {
  const slices = await readSlices(excel);
  const found: Lost[] = [];
  const protectedSheets = new Set<string>();
  for (const [index, slice] of slices.entries()) {
    signal.throwIfAborted();
    const lost = await lostIn(excel, slice);
    if (!slice.isProtected) found.push(...lost);
    else if (lost.length > 0) protectedSheets.add(slice.name);
    onProgress((index + 1) / slices.length);
  }
  return { found, protectedSheets: [...protectedSheets] };
};

/** Loading a single cell costs as much as this many cells of a block. */
const SINGLE_CELL_COST = 5;

const groupsOf = <Each extends Lost>(cells: readonly Each[]): Each[][] =>
  grouped(cells, () => SINGLE_CELL_COST);

const rangesOf = ({ workbook }: Excel.RequestContext, cells: readonly Lost[]): Excel.Range[] =>
  cells.map(({ sheetId, row, column }) =>
    workbook.worksheets.getItem(sheetId).getRangeByIndexes(row, column, 1, 1),
  );

const formulaIn = ({ formulas }: Excel.Range): unknown => (formulas as unknown[][])[0]?.[0];

/** A cell whose formula was entered again, with the formula as Excel keeps it; undefined until Excel has answered. */
interface Entered extends Lost {
  now?: unknown;
}

/** Enters formulas again, except in cells that a user has edited since. Adds each to `entered` before its turn. */
const enter = (
  excel: ExcelEntry,
  found: readonly Lost[],
  entered: Entered[],
  { onProgress, signal }: ProgressMonitor,
): Promise<void> =>
  excel.run(async (context) => {
    const { application } = context.workbook;
    const groups = groupsOf(found);
    for (const [index, group] of groups.entries()) {
      const current = rangesOf(context, group);
      for (const range of current) range.load("formulas");
      await context.sync();
      signal.throwIfAborted();
      const turns = group.flatMap((lost, at): { cell: Entered; range: Excel.Range }[] => {
        const range = current[at];
        return range && formulaIn(range) === lost.formula ? [{ cell: { ...lost }, range }] : [];
      });
      application.suspendScreenUpdatingUntilNextSync();
      for (const { cell, range } of turns) {
        entered.push(cell);
        range.formulas = [[cell.formula.replace(AS_SAVED, `${NAMESPACE}.`)]];
        range.load("formulas");
      }
      await context.sync();
      for (const { cell, range } of turns) cell.now = formulaIn(range);
      signal.throwIfAborted();
      onProgress((index + 1) / groups.length);
    }
  });

/** Recalculates, and counts the cells that still show #NAME?. */
const countUnknown = (
  excel: ExcelEntry,
  cells: readonly Lost[],
  { signal }: ProgressMonitor,
): Promise<number> =>
  excel.run(async (context) => {
    context.workbook.application.calculate("Full");
    let count = 0;
    for (const group of groupsOf(cells)) {
      const ranges = rangesOf(context, group);
      for (const range of ranges) range.load("values");
      await context.sync();
      signal.throwIfAborted();
      count += ranges.filter(({ values }) => values[0]?.[0] === UNKNOWN_NAME).length;
    }
    return count;
  });

/** Restores the formulas, except where a user has typed since. */
const putBack = (excel: ExcelEntry, entered: readonly Entered[]): Promise<void> =>
  excel.run(async (context) => {
    for (const group of groupsOf(entered)) {
      const ranges = rangesOf(context, group);
      for (const range of ranges) range.load("formulas");
      context.workbook.application.suspendScreenUpdatingUntilNextSync();
      // Carries out the group before, too.
      await context.sync();
      for (const [at, range] of ranges.entries()) {
        const { now, formula } = group[at] as Entered;
        if (now === undefined || formulaIn(range) === now) range.formulas = [[formula]];
      }
    }
    await context.sync();
  });

/** Refuses where a user has typed: the cell has neither the entered formula nor the one before (as after a failed Undo). */
const refuseEdits = (excel: ExcelEntry, entered: readonly Entered[]): Promise<void> =>
  excel.run(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/id,items/name");
    const changed: SheetCellAddress[] = [];
    for (const group of groupsOf(entered)) {
      const ranges = rangesOf(context, group);
      for (const range of ranges) range.load("formulas");
      await context.sync();
      for (const [at, range] of ranges.entries()) {
        const { sheetId, row, column, formula, now } = group[at] as Entered;
        const sheet = worksheets.items.find(({ id }) => id === sheetId)?.name ?? "";
        if (![now, formula].includes(formulaIn(range))) changed.push({ sheet, row, column });
      }
    }
    refuseChanged(changed);
  });

/** Reports progress as one half of a longer run. */
const halfOf = (run: ProgressMonitor, done: number): ProgressMonitor => ({
  ...run,
  onProgress: (share) => {
    run.onProgress((done + share) / 2);
  },
});

/** Enters every formula of ours that shows #NAME? again, recalculates, and reports the result. */
export const repair = async (excel: ExcelEntry, run: ProgressMonitor = NO_MONITOR): Promise<Repaired> => {
  const { found, protectedSheets } = await findLost(excel, halfOf(run, 0));
  const entered: Entered[] = [];
  const back = (): Promise<void> => putBack(excel, entered);
  const stillUnknown = await allOrNothing(async () => {
    await enter(excel, found, entered, halfOf(run, 1));
    return entered.length === 0 ? 0 : countUnknown(excel, entered, run);
  }, back);
  if (entered.length === 0) return { entered: 0, stillUnknown, protectedSheets };
  return {
    entered: entered.length,
    stillUnknown,
    protectedSheets,
    undo: async () => {
      await refuseEdits(excel, entered);
      await back();
    },
  };
};
