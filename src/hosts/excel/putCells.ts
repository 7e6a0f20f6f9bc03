import { InputError } from "../../../shared/inputError";
import {
  areaInWords,
  addressesIn,
  readArea,
  type Area,
  type CellAddress,
  type SheetCellAddress,
} from "../../workbook/address";
import {
  lookOf,
  patchArea,
  refuseChanged,
  refuseOccupied,
  type CellPatch,
  type Occupied,
  type Undo,
} from "../../workbook/patch";
import { UNWATCHED, type LongRun } from "../../workbook/longRun";
import { allOrNothing } from "./allOrNothing";
import { toCellValue } from "./content";
import type { ExcelEntry } from "./excelEntry";
import { areaOf, PLACE_AND_SIZE, rangeOf, slicesOf, splitAddress } from "./ranges";
import { readInPieces } from "./readInPieces";
import { linesOf, toCell } from "./readSheet";

/** What stood in the cells, as far as a write changes it. */
interface Before {
  readonly sheetId: string;
  readonly formulas: unknown[][];
  readonly numberFormats: unknown[][];
  /** The number formats of the row that new cells are to look like, column by column; none where they look like a column. */
  readonly usual: readonly unknown[];
  /** No cell had any format of its own, so Excel's own "clear formats" brings exactly that back. */
  readonly isUnformatted: boolean;
}

/** A slice that was begun, with its formulas as Excel keeps them once it has carried them out. */
interface Begun {
  readonly slice: Area;
  formulas?: unknown[][];
}

const refuse = (sentence: string): never => {
  throw new InputError(`${sentence}. Nothing was written.`);
};

/** What a matrix of a block holds for a place of the sheet. */
const at = (lines: unknown[][] | undefined, { from }: Area, { row, column }: CellAddress): unknown =>
  lines?.[row - from.row]?.[column - from.column];

/** The part of a block's matrix that lies in an area of it. */
const blockIn = (lines: unknown[][], whole: Area, { from, to }: Area): unknown[][] =>
  linesIn(lines, whole, { from, to }).map((line) =>
    line.slice(from.column - whole.from.column, to.column - whole.from.column + 1),
  );

/** The cells of a block that hold something that may not be replaced; a formula may show nothing. */
const occupiedIn = (
  { values, formulas }: { readonly values: unknown[][]; readonly formulas: unknown[][] },
  area: Area,
  { mayReplace = () => false }: CellPatch,
): Occupied[] =>
  addressesIn(area).flatMap((place) => {
    const value = at(values, area, place);
    const formula = at(formulas, area, place);
    const holds = value === "" ? formula : value;
    return holds === "" || mayReplace(toCell(formula)) ? [] : [{ ...place, holds: toCell(holds) }];
  });

const readBefore = (excel: ExcelEntry, patch: CellPatch, area: Area): Promise<Before> =>
  excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem(patch.sheet);
    const target = rangeOf(sheet, area);
    const merged = target.getMergedAreasOrNullObject();
    const formatted = target.getUsedRangeOrNullObject(false);
    const tables = target.getTables(false);
    const row = patch.lookLike && "row" in patch.lookLike ? lookOf(patch, area) : undefined;
    const like = row && rangeOf(sheet, row);
    like?.load("numberFormat");
    sheet.load("id");
    sheet.protection.load("protected");
    merged.load("address");
    formatted.load("address");
    tables.load("items/name");
    await context.sync();

    if (sheet.protection.protected) refuse(`"${patch.sheet}" is protected`);
    if (!merged.isNullObject)
      refuse(
        `${splitAddress(merged.address)
          .map((each) => areaInWords(readArea(each)))
          .join(", ")} is merged`,
      );
    if (tables.items[0]) refuse(`${areaInWords(area)} is in the table ${tables.items[0].name}`);
    const [lines = []] = await readInPieces(
      context,
      [{ sheet, name: patch.sheet, area }],
      (range) => {
        range.load("values,formulas,numberFormat");
        return range;
      },
      (range) =>
        linesOf(range).map((line, row) => ({
          ...line,
          numberFormats: (range.numberFormat[row] ?? []) as unknown[],
        })),
    );
    const formulas = lines.map((line) => line.formulas);
    refuseOccupied(occupiedIn({ values: lines.map(({ values }) => values), formulas }, area, patch));
    return {
      sheetId: sheet.id,
      formulas,
      numberFormats: lines.map(({ numberFormats }) => numberFormats),
      usual: (like?.numberFormat[0] ?? []) as unknown[],
      isUnformatted: formatted.isNullObject,
    };
  });

type CellLines = CellPatch["cells"];

/** What Excel calls the number format of a cell that was given none. */
const NO_FORMAT = "General";

/** null leaves a cell as it is. */
const valuesOf = (cells: CellLines): unknown[][] =>
  cells.map((line) => line.map((cell) => (cell ? toCellValue(cell.content) : null)));
/** A cell that has a number format of its own keeps it where the patch gives none. */
const numberFormatsOf = (cells: CellLines, own: unknown[][], usual: readonly unknown[]): unknown[][] =>
  cells.map((line, row) =>
    line.map((cell, column) => {
      if (!cell || cell.numberFormat !== undefined) return cell?.numberFormat ?? null;
      return own[row]?.[column] === NO_FORMAT ? (usual[column] ?? null) : null;
    }),
  );

/** The lines of a block that lie in a slice of it. */
const linesIn = <Line>(lines: readonly Line[], whole: Area, { from, to }: Area): Line[] =>
  lines.slice(from.row - whole.from.row, to.row - whole.from.row + 1);

const grownTable = ({ from, to }: Area, area: Area): Area => ({
  from,
  to: { row: to.row, column: area.to.column },
});

/** Writes a step for each slice, and notes which were begun. `look` sees a slice just before its turn. */
const write = (
  excel: ExcelEntry,
  patch: CellPatch,
  before: Before,
  begun: Begun[],
  { onProgress, signal }: LongRun = UNWATCHED,
  look: (range: Excel.Range, slice: Area) => void = () => undefined,
): Promise<void> =>
  excel.run(async (context) => {
    const { workbook } = context;
    const sheet = workbook.worksheets.getItem(before.sheetId);
    const area = patchArea(patch);
    const slices = slicesOf(area);
    const askFor = (slice: Area | undefined): (() => void) => {
      if (!slice) return () => undefined;
      const range = rangeOf(sheet, slice);
      range.load("values,formulas");
      return () => look(range, slice);
    };
    // By now it is a while ago that its cells were read, where they are many.
    const lookAtFirst = askFor(slices[0]);
    await context.sync();
    lookAtFirst();
    for (const [index, slice] of slices.entries()) {
      workbook.application.suspendScreenUpdatingUntilNextSync();
      const step: Begun = { slice };
      begun.push(step);
      const target = rangeOf(sheet, slice);
      // Formats come first: a formula that is written into a cell of text format stays text. A table formats its own cells.
      const look = lookOf(patch, slice);
      if (look && before.isUnformatted && !patch.table) target.copyFrom(rangeOf(sheet, look), "Formats");
      const lines = linesIn(patch.cells, area, slice);
      target.numberFormat = numberFormatsOf(lines, linesIn(before.numberFormats, area, slice), before.usual);
      target.formulas = valuesOf(lines);
      if (patch.table && slice === slices.at(-1))
        workbook.tables.getItem(patch.table.name).resize(rangeOf(sheet, grownTable(patch.table.area, area)));
      target.load("formulas");
      const lookAhead = askFor(slices[index + 1]);
      await context.sync();
      step.formulas = target.formulas as unknown[][];
      signal.throwIfAborted();
      lookAhead();
      onProgress((index + 1) / slices.length);
    }
  });

/** Takes away what was written, but for cells that hold something else by now: a person has typed there meanwhile. */
const putBack = (
  excel: ExcelEntry,
  patch: CellPatch,
  before: Before,
  begun: readonly Begun[],
): Promise<void> =>
  excel.run(async (context) => {
    const { workbook } = context;
    const area = patchArea(patch);
    const sheet = workbook.worksheets.getItem(before.sheetId);
    if (patch.table && begun.at(-1)?.slice.to.row === area.to.row)
      workbook.tables.getItem(patch.table.name).resize(rangeOf(sheet, patch.table.area));
    for (const { slice, formulas } of begun) {
      const standing = rangeOf(sheet, slice);
      standing.load("formulas");
      workbook.application.suspendScreenUpdatingUntilNextSync();
      // What was put back of the slice before goes with it.
      await context.sync();
      const isOurs = (place: CellAddress): boolean =>
        formulas === undefined || at(standing.formulas, slice, place) === at(formulas, slice, place);
      const ours = addressesIn(slice).filter(isOurs);
      const areas =
        ours.length === addressesIn(slice).length
          ? [slice]
          : ours.map((place) => ({ from: place, to: place }));
      for (const each of areas) {
        const target = rangeOf(sheet, each);
        target.formulas = blockIn(before.formulas, area, each);
        if (before.isUnformatted) target.clear("Formats");
        else target.numberFormat = blockIn(before.numberFormats, area, each);
      }
    }
    await context.sync();
  });

/** A formula stands as it was written, whatever it shows; so a difference is somebody's edit. */
const refuseEdits = (
  excel: ExcelEntry,
  patch: CellPatch,
  { sheetId }: Before,
  begun: readonly Begun[],
  { onProgress, signal }: LongRun,
): Promise<void> =>
  excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem(sheetId);
    sheet.load("name");
    const changed: SheetCellAddress[] = [];
    for (const [index, { slice, formulas }] of begun.entries()) {
      const target = rangeOf(sheet, slice);
      target.load("formulas");
      await context.sync();
      signal.throwIfAborted();
      changed.push(
        ...addressesIn(slice)
          .filter((place) => at(target.formulas, slice, place) !== at(formulas, slice, place))
          .map((place) => ({ ...place, sheet: sheet.name })),
      );
      onProgress((index + 1) / begun.length);
    }
    refuseChanged(changed);
    if (!patch.table) return;
    const table = context.workbook.tables.getItem(patch.table.name).getRange();
    table.load(PLACE_AND_SIZE);
    await context.sync();
    // Rows that a person has added to it since would be cut off.
    if (areaInWords(areaOf(table)) !== areaInWords(grownTable(patch.table.area, patchArea(patch))))
      throw new InputError(`The table ${patch.table.name} has changed since; nothing was undone.`);
  });

/** Writes into blank cells of a sheet, all or nothing. */
export const putCells = async (excel: ExcelEntry, patch: CellPatch, run?: LongRun): Promise<Undo> => {
  const area = patchArea(patch);
  const before = await readBefore(excel, patch, area);
  let begun: Begun[] = [];
  const back = (): Promise<void> => putBack(excel, patch, before, begun);
  /** What a person has typed meanwhile into a cell whose turn hasn't come stays. */
  const refuseTyped = (range: Excel.Range, slice: Area): void => {
    refuseOccupied(
      occupiedIn(range, slice, patch).filter(
        ({ row, column }) => patch.cells[row - area.from.row]?.[column - area.from.column],
      ),
    );
  };
  await allOrNothing(() => write(excel, patch, before, begun, run, refuseTyped), back);
  return async (undoRun = UNWATCHED) => {
    await refuseEdits(excel, patch, before, begun, undoRun);
    await allOrNothing(back, async () => {
      begun = [];
      await write(excel, patch, before, begun);
    });
  };
};
