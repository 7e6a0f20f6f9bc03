import { InputError } from "../../../../shared/inputError";
import { addressesIn, areaAddress, readArea, type Area } from "../../../workbook/address";
import {
  formatSource,
  patchArea,
  refuseOccupied,
  type CellPatch,
  type Occupied,
  type PatchCell,
} from "../../../workbook/patch";
import { blockAt, type CellBlock } from "../ranges/cellBlock";
import type { ExcelEntry } from "../ranges/excelEntry";
import { rangeOf, splitAddress } from "../ranges/ranges";
import { readInPieces } from "../ranges/readInPieces";
import { linesOf, toCell } from "../read/readSheet";

/** The cells that a patch writes to, with what they held before. */
export interface PatchTarget {
  readonly patch: CellPatch;
  readonly area: Area;
  readonly cells: CellBlock<PatchCell | null>;
  /** The sheet may be renamed in the meantime. */
  readonly sheetId: string;
  readonly formulas: CellBlock;
  readonly numberFormats: CellBlock;
  /** Column by column, the number formats of the row that the new cells are formatted like; empty where there is none. */
  readonly rowNumberFormats: readonly unknown[];
  /** No cell had a format, so that clearing formats restores them exactly. */
  readonly isUnformatted: boolean;
}

const refuse = (reason: string): never => {
  throw new InputError(`${reason}. Nothing was written.`);
};

/** Loads what keeps an area from being written. The check, called after the next sync, refuses it. */
const loadObstacles = (sheet: Excel.Worksheet, name: string, area: Area): (() => void) => {
  const range = rangeOf(sheet, area);
  const merged = range.getMergedAreasOrNullObject();
  const tables = range.getTables(false);
  sheet.protection.load("protected");
  merged.load("address");
  tables.load("items/name");
  return () => {
    if (sheet.protection.protected) refuse(`"${name}" is protected`);
    if (!merged.isNullObject)
      refuse(
        `${splitAddress(merged.address)
          .map((each) => areaAddress(readArea(each)))
          .join(", ")} is merged`,
      );
    if (tables.items[0]) refuse(`${areaAddress(area)} is in the table ${tables.items[0].name}`);
  };
};

/** Loads the row that a patch's cells are formatted like, if it names one. */
const loadFormatRow = (sheet: Excel.Worksheet, patch: CellPatch, area: Area): Excel.Range | undefined => {
  const row = patch.copyFormatsFrom && "row" in patch.copyFormatsFrom ? formatSource(patch, area) : undefined;
  const range = row && rangeOf(sheet, row);
  range?.load("numberFormat");
  return range;
};

/** The cells that hold something the patch may not replace. A formula counts even where it shows empty text. */
export const occupiedCells = (
  values: CellBlock,
  formulas: CellBlock,
  { mayReplace = () => false }: CellPatch,
): Occupied[] =>
  addressesIn(values.area).flatMap((address) => {
    const value = blockAt(values, address);
    const formula = blockAt(formulas, address);
    const holds = value === "" ? formula : value;
    return holds === "" || mayReplace(toCell(formula)) ? [] : [{ ...address, holds: toCell(holds) }];
  });

/** Reads the cells of a patch's area. Refuses where one is occupied, merged, protected or in a table. */
export const readTarget = (excel: ExcelEntry, patch: CellPatch): Promise<PatchTarget> =>
  excel.run(async (context) => {
    const area = patchArea(patch);
    const sheet = context.workbook.worksheets.getItem(patch.sheet);
    const refuseObstacles = loadObstacles(sheet, patch.sheet, area);
    const formatRow = loadFormatRow(sheet, patch, area);
    const formatted = rangeOf(sheet, area).getUsedRangeOrNullObject(false);
    formatted.load("address");
    sheet.load("id");
    await context.sync();
    refuseObstacles();

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
    const block = (name: "values" | "formulas" | "numberFormats"): CellBlock => ({
      area,
      rows: lines.map((line) => line[name]),
    });
    refuseOccupied(occupiedCells(block("values"), block("formulas"), patch));
    return {
      patch,
      area,
      cells: { area, rows: patch.cells },
      sheetId: sheet.id,
      formulas: block("formulas"),
      numberFormats: block("numberFormats"),
      rowNumberFormats: (formatRow?.numberFormat[0] ?? []) as unknown[],
      isUnformatted: formatted.isNullObject,
    };
  });
