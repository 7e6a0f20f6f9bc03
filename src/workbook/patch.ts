import type { Cell } from "../../shared/cell";
import { counted, describeCell } from "../../shared/describe";
import { InputError } from "../../shared/inputError";
import type { ProgressMonitor } from "./progressMonitor";
import { a1, areaAddress, type Area, type CellAddress, type SheetCellAddress } from "./address";
import type { SpreadsheetTable } from "./survey";
import type { CellContent } from "./plan";

/** A cell to write. Where no number format is given it stays as it is, or is that of the row that new cells look like. */
export interface PatchCell {
  readonly content: CellContent;
  readonly numberFormat?: string;
}

/** Cells to write into a sheet that exists. All of them must be blank, those that stay blank too, but for what may be replaced. */
export interface CellPatch {
  readonly sheet: string;
  readonly at: CellAddress;
  /** Row by row from `at`, all of one length; null stays blank. */
  readonly cells: readonly (readonly (PatchCell | null)[])[];
  /** Whether a cell may be written over that holds this, a formula as it is typed. */
  readonly mayReplace?: (holds: Cell) => boolean;
  /** The column whose formats the new cells take, row by row; or the row whose formats they take, column by column. */
  readonly copyFormatsFrom?: { readonly column: number } | { readonly row: number };
  /** A spreadsheet's table that grows to the right by these columns. */
  readonly table?: Pick<SpreadsheetTable, "name" | "area">;
}

/** Takes a write back, exactly; refuses where a cell has changed since. Canceled, it leaves what was written. */
export type Undo = (run?: ProgressMonitor) => Promise<void>;

export const patchArea = ({ at, cells }: CellPatch): Area => ({
  from: at,
  to: { row: at.row + cells.length - 1, column: at.column + (cells[0]?.length ?? 1) - 1 },
});

/** The cells of a slice of a patch's area are to look like these, or undefined where they look like none. */
export const formatSource = ({ copyFormatsFrom }: CellPatch, { from, to }: Area): Area | undefined =>
  copyFormatsFrom && { from: { ...from, ...copyFormatsFrom }, to: { ...to, ...copyFormatsFrom } };

/** A cell that holds something where a patch would write. */
export interface Occupied extends CellAddress {
  readonly holds: Cell;
}

const MOST_LISTED = 5;

/** `F4 holds "Notes", F7 holds 12 and 3 more cells hold something`. */
export const occupiedInWords = (occupied: readonly Occupied[]): string => {
  const listed = occupied
    .slice(0, MOST_LISTED)
    .map((each) => `${a1(each)} holds ${describeCell(each.holds)}`);
  const more = occupied.length - listed.length;
  return listed.join(", ") + (more > 0 ? ` and ${more} more cells hold something` : "");
};

export const refuseOccupied = (occupied: readonly Occupied[]): void => {
  if (occupied.length > 0) throw new InputError(`${occupiedInWords(occupied)}. Nothing was written.`);
};

/** What a host says when a cell no longer holds what was written to it. */
export const refuseChanged = (changed: readonly SheetCellAddress[]): void => {
  const [first] = changed;
  if (!first) return;
  const others = changed.length > 1 ? ` and ${changed.length - 1} more cells have` : " has";
  throw new InputError(`${a1(first)} on "${first.sheet}"${others} changed since; nothing was undone.`);
};

/** `3 columns, 24 cells, F4:H27 on "Bid"`. */
export const patchInWords = (patch: CellPatch): string => {
  const columns = patch.cells[0]?.length ?? 0;
  const cells = patch.cells.flat().filter((cell) => cell !== null).length;
  return `${counted(columns, "column")}, ${counted(cells, "cell")}, ${areaAddress(patchArea(patch))} on "${patch.sheet}"`;
};
