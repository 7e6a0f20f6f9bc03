import { InputError } from "../../../shared/inputError";
import { areaInWords, readArea, type Area } from "../../sheets/address";
import { patchArea, refuseChanged, refuseOccupied, type CellPatch, type Undo } from "../../sheets/patch";
import { UNWATCHED, type LongRun } from "../longRun";
import { allOrNothing } from "./allOrNothing";
import { toCellValue } from "./content";
import type { ExcelEntry } from "./excelHost";
import { rangeOf, slicesOf, splitAddress } from "./ranges";
import { toCell } from "./readSheet";

/** What stood in the cells, as far as a write changes it. */
interface Before {
  readonly sheetId: string;
  readonly formulas: unknown[][];
  readonly numberFormats: unknown[][];
  /** No cell had any format of its own, so Excel's own "clear formats" brings exactly that back. */
  readonly isUnformatted: boolean;
}

const refuse = (sentence: string): never => {
  throw new InputError(`${sentence}. Nothing was written.`);
};

const readBefore = (excel: ExcelEntry, patch: CellPatch, area: Area): Promise<Before> =>
  excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem(patch.sheet);
    const target = rangeOf(sheet, area);
    const merged = target.getMergedAreasOrNullObject();
    const formatted = target.getUsedRangeOrNullObject(false);
    const tables = target.getTables(false);
    sheet.load("id");
    sheet.protection.load("protected");
    target.load("values,formulas,numberFormat");
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
    const formulas = target.formulas as unknown[][];
    refuseOccupied(
      (target.values as unknown[][]).flatMap((line, row) =>
        line.flatMap((value, column) => {
          // A formula may show nothing.
          const holds = value === "" ? formulas[row]?.[column] : value;
          return holds === ""
            ? []
            : [{ row: area.from.row + row, column: area.from.column + column, holds: toCell(holds) }];
        }),
      ),
    );
    return {
      sheetId: sheet.id,
      formulas,
      numberFormats: target.numberFormat as unknown[][],
      isUnformatted: formatted.isNullObject,
    };
  });

type CellLines = CellPatch["cells"];

/** null leaves a cell as it is. */
const valuesOf = (cells: CellLines): unknown[][] =>
  cells.map((line) => line.map((cell) => (cell ? toCellValue(cell.content) : null)));
const numberFormatsOf = (cells: CellLines): unknown[][] =>
  cells.map((line) => line.map((cell) => cell?.numberFormat ?? null));

const linesIn = ({ cells, at }: CellPatch, { from, to }: Area): CellLines =>
  cells.slice(from.row - at.row, to.row - at.row + 1);

/** Writes a step for each slice, and gives back the formulas as Excel keeps them. */
const write = (
  excel: ExcelEntry,
  patch: CellPatch,
  area: Area,
  before: Before,
  { onProgress, signal }: LongRun = UNWATCHED,
): Promise<unknown[][]> =>
  excel.run(async (context) => {
    const { workbook } = context;
    const sheet = workbook.worksheets.getItem(before.sheetId);
    const kept: unknown[][] = [];
    const slices = slicesOf(area);
    for (const [index, slice] of slices.entries()) {
      workbook.application.suspendScreenUpdatingUntilNextSync();
      const target = rangeOf(sheet, slice);
      // Formats come first: a formula that is written into a cell of text format stays text. A table formats its own cells.
      if (patch.lookLike !== undefined && before.isUnformatted && !patch.table) {
        const column = patch.lookLike;
        target.copyFrom(
          rangeOf(sheet, { from: { row: slice.from.row, column }, to: { row: slice.to.row, column } }),
          "Formats",
        );
      }
      const lines = linesIn(patch, slice);
      target.numberFormat = numberFormatsOf(lines);
      target.formulas = valuesOf(lines);
      if (patch.table && slice === slices.at(-1)) {
        const { name, area: old } = patch.table;
        workbook.tables
          .getItem(name)
          .resize(rangeOf(sheet, { from: old.from, to: { row: old.to.row, column: area.to.column } }));
      }
      target.load("formulas");
      await context.sync();
      signal.throwIfAborted();
      kept.push(...(target.formulas as unknown[][]));
      onProgress((index + 1) / slices.length);
    }
    return kept;
  });

const putBack = (excel: ExcelEntry, patch: CellPatch, area: Area, before: Before): Promise<void> =>
  excel.run(async (context) => {
    const { workbook } = context;
    workbook.application.suspendScreenUpdatingUntilNextSync();
    const sheet = workbook.worksheets.getItem(before.sheetId);
    const target = rangeOf(sheet, area);
    if (patch.table) workbook.tables.getItem(patch.table.name).resize(rangeOf(sheet, patch.table.area));
    target.formulas = before.formulas;
    if (before.isUnformatted) target.clear("Formats");
    else target.numberFormat = before.numberFormats;
    await context.sync();
  });

const readFormulas = (excel: ExcelEntry, area: Area, { sheetId }: Before): Promise<unknown[][]> =>
  excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem(sheetId);
    const formulas: unknown[][] = [];
    for (const slice of slicesOf(area)) {
      const target = rangeOf(sheet, slice);
      target.load("formulas");
      await context.sync();
      formulas.push(...(target.formulas as unknown[][]));
    }
    return formulas;
  });

/** A formula stands as it was written, whatever it shows; so a difference is somebody's edit. */
const refuseEdits = async (
  excel: ExcelEntry,
  area: Area,
  before: Before,
  written: unknown[][],
): Promise<void> => {
  const now = await readFormulas(excel, area, before);
  refuseChanged(
    now.flatMap((line, row) =>
      line.flatMap((formula, column) =>
        formula === written[row]?.[column]
          ? []
          : [{ row: area.from.row + row, column: area.from.column + column }],
      ),
    ),
  );
};

/** Writes into blank cells of a sheet, all or nothing. */
export const putCells = async (excel: ExcelEntry, patch: CellPatch, run?: LongRun): Promise<Undo> => {
  const area = patchArea(patch);
  const before = await readBefore(excel, patch, area);
  const back = (): Promise<void> => putBack(excel, patch, area, before);
  const written = await allOrNothing(() => write(excel, patch, area, before, run), back);
  return async () => {
    await refuseEdits(excel, area, before, written);
    await allOrNothing(back, async () => {
      await write(excel, patch, area, before);
    });
  };
};
