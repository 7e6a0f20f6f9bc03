import {
  ICommandService,
  IUndoRedoService,
  Tools,
  type ICellData,
  type IMutationInfo,
  type Injector,
  type IStyleData,
  type Nullable,
  type Workbook,
  type Worksheet,
} from "@univerjs/core";
import { RangeProtectionRuleModel, SetRangeValuesMutation } from "@univerjs/sheets";
import { InputError } from "../../../../shared/inputError";
import {
  areaAddress,
  splitByRows,
  overlap,
  addressesIn,
  type Area,
  type CellAddress,
} from "../../../workbook/address";
import {
  formatSource,
  patchArea,
  refuseChanged,
  refuseOccupied,
  type CellPatch,
  type PatchCell,
  type Undo,
} from "../../../workbook/patch";
import { NO_MONITOR, type ProgressMonitor } from "../../../workbook/progressMonitor";
import { cellDataAt, fromCellData, toCellData } from "../engine/cellData";
import { lockCells, OWN_WRITE } from "./lockCells";
import { contentData } from "../engine/planSnapshot";
import { formulaAt, isProtected, toArea } from "./survey";

type CellRows = Record<number, Record<number, Nullable<ICellData>>>;

/** A cell's address and the data that the engine holds for it. */
interface SavedCell extends CellAddress {
  readonly data: Nullable<ICellData>;
}

const refuseProtected = (injector: Injector, sheet: Worksheet, area: Area): void => {
  const ids = [sheet.getUnitId(), sheet.getSheetId()] as const;
  const ranges = injector
    .get(RangeProtectionRuleModel)
    .getSubunitRuleList(...ids)
    .flatMap(({ ranges }) => ranges);
  if (isProtected(injector, sheet) || ranges.some((each) => overlap(toArea(each), area)))
    throw new InputError(`${areaAddress(area)} of "${sheet.getName()}" is protected. Nothing was written.`);
};

const refuseUnwritable = (
  injector: Injector,
  sheet: Worksheet,
  area: Area,
  { mayReplace = () => false }: CellPatch,
): void => {
  refuseProtected(injector, sheet, area);
  if (area.to.row >= sheet.getRowCount() || area.to.column >= sheet.getColumnCount())
    throw new InputError(`${areaAddress(area)} goes past the sheet's end. Nothing was written.`);
  const merged = sheet
    .getMergeData()
    .map(toArea)
    .find((each) => overlap(each, area));
  if (merged) throw new InputError(`${areaAddress(merged)} is merged. Nothing was written.`);
  refuseOccupied(
    addressesIn(area).flatMap((place) => {
      const shows = fromCellData(cellDataAt(injector, sheet, place.row, place.column));
      const formula = formulaAt(injector, sheet, place.row, place.column);
      const holds = shows === null || shows === "" ? formula : shows;
      return holds === "" || mayReplace(formula || holds) ? [] : [{ ...place, holds }];
    }),
  );
};

/**
 * The data for a new cell. The cell keeps its own style if it has one, and otherwise gets its neighbor's. Its number format is the
 * patch's, else its own, else the neighbor's. The style is complete, so the cell comes out the same if it was cleared first.
 */
const newCellData = (
  workbook: Workbook,
  cell: PatchCell | null,
  own: Nullable<ICellData>,
  like: Nullable<ICellData>,
): ICellData => {
  const styleOf = (data: Nullable<ICellData>): Nullable<IStyleData> =>
    data?.s ? workbook.getStyles().getStyleByCell(data) : undefined;
  const neighbors = styleOf(like);
  const style = styleOf(own) ?? neighbors;
  const n =
    cell?.numberFormat === undefined ? (style?.n ?? (cell && neighbors?.n)) : { pattern: cell.numberFormat };
  return {
    ...(cell && contentData(cell.content)),
    s: { ...style, ...(n && { n }) },
  };
};

const byRow = (cells: readonly SavedCell[]): CellRows => {
  const rows: CellRows = {};
  for (const { row, column, data } of cells) (rows[row] ??= {})[column] = data;
  return rows;
};

/** Clears a cell, with its style and custom data. The engine would keep any key that is left out. */
const CLEARED: ICellData = { ...toCellData(null), s: null, custom: null };

/** The steps that restore cells. They clear the cells first, because the engine merges new data into the old. */
const restoringSteps = (
  ids: { unitId: string; subUnitId: string },
  before: readonly SavedCell[],
): IMutationInfo[] => {
  const filled = before.filter(({ data }) => data);
  return [before.map((kept) => ({ ...kept, data: { ...CLEARED } })), filled]
    .filter((cells) => cells.length > 0)
    .map((cells) => ({ id: SetRangeValuesMutation.id, params: { ...ids, cellValue: byRow(cells) } }));
};

/** The steps that write some of the cells, and those that undo it. */
interface Piece {
  readonly redo: readonly IMutationInfo[];
  readonly undo: readonly IMutationInfo[];
}

const reversed = (pieces: readonly Piece[]): Piece[] =>
  pieces.map(({ redo, undo }) => ({ redo: undo, undo: redo })).reverse();

/** Writing and calculating this many cells takes a few tenths of a second. */
const CELLS_AT_ONCE = 2_000;

/** `rest` lets the page do other work between two pieces, such as handle typing. */
export interface WriteOptions {
  readonly run?: ProgressMonitor;
  readonly rest?: () => Promise<void>;
  /** Shows a message to someone who edits the cells meanwhile. */
  readonly tell?: (message: string) => void;
}

/** Writes into blank cells of a sheet piece by piece, all or nothing, as one step of the workbook's own Undo. */
export const putCells = async (
  injector: Injector,
  workbook: Workbook,
  patch: CellPatch,
  { run = NO_MONITOR, rest = () => Promise.resolve(), tell = () => undefined }: WriteOptions = {},
): Promise<Undo> => {
  const sheet = workbook.getSheetBySheetName(patch.sheet);
  if (!sheet) throw new InputError(`There is no sheet "${patch.sheet}" in the workbook any more.`);
  const area = patchArea(patch);
  refuseUnwritable(injector, sheet, area, patch);

  const commands = injector.get(ICommandService);
  const ids = { unitId: workbook.getUnitId(), subUnitId: sheet.getSheetId() };
  const perform = (steps: readonly IMutationInfo[]): void => {
    for (const { id, params } of steps)
      // The engine keeps the objects that it gets, and changes them.
      if (!commands.syncExecuteCommand(id, Tools.deepClone(params), OWN_WRITE))
        throw new Error("The workbook rejected the cells.");
  };

  const pieceOf = (slice: Area): Piece => {
    const before = addressesIn(slice).map(({ row, column }): SavedCell => ({
      row,
      column,
      data: Tools.deepClone(sheet.getCellRaw(row, column)),
    }));
    const after = before.map(({ row, column, data }): SavedCell => {
      const place = { row, column };
      const source = formatSource(patch, { from: place, to: place })?.from;
      const like = source && sheet.getCellRaw(source.row, source.column);
      const cell = patch.cells[row - patch.at.row]?.[column - patch.at.column] ?? null;
      return { row, column, data: newCellData(workbook, cell, data, like) };
    });
    return {
      redo: [{ id: SetRangeValuesMutation.id, params: { ...ids, cellValue: byRow(after) } }],
      undo: restoringSteps(ids, before),
    };
  };

  /** Writes all pieces or none, and makes them one step of the workbook's Undo. */
  const writePieces = async (
    pieces: readonly Piece[],
    { onProgress, signal }: ProgressMonitor,
  ): Promise<void> => {
    const unlock = lockCells(commands, sheet, area, tell);
    const begun: Piece[] = [];
    try {
      for (const piece of pieces) {
        if (begun.length > 0) await rest();
        signal.throwIfAborted();
        begun.push(piece);
        perform(piece.redo);
        onProgress(begun.length / pieces.length);
      }
    } catch (failure) {
      for (const { undo } of begun.reverse()) perform(undo);
      throw failure;
    } finally {
      unlock();
    }
    injector.get(IUndoRedoService).pushUndoRedo({
      unitID: ids.unitId,
      undoMutations: Tools.deepClone(reversed(pieces).flatMap(({ redo }) => redo)),
      redoMutations: Tools.deepClone(pieces.flatMap(({ redo }) => redo)),
    });
  };

  const pieces = splitByRows(area, CELLS_AT_ONCE).map(pieceOf);
  await writePieces(pieces, run);
  const places = addressesIn(area);
  const written = places.map((place) => formulaOrValue(injector, sheet, place));
  return async (run = NO_MONITOR) => {
    const changed = places.filter(
      (place, index) => formulaOrValue(injector, sheet, place) !== written[index],
    );
    refuseChanged(changed.map((place) => ({ ...place, sheet: sheet.getName() })));
    await writePieces(reversed(pieces), run);
  };
};

/** A cell's formula or value, to tell whether someone has edited it. A formula's result may change without an edit. */
const formulaOrValue = (injector: Injector, sheet: Worksheet, { row, column }: CellAddress): unknown =>
  formulaAt(injector, sheet, row, column) || fromCellData(sheet.getCellRaw(row, column));
