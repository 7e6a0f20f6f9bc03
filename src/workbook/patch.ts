import type { Cell } from "../../shared/cell";
import { counted, describeCell } from "../../shared/describe";
import { InputError } from "../../shared/inputError";
import type { ProgressMonitor } from "./progressMonitor";
import { a1, areaAddress, type Area, type CellAddress, type SheetCellAddress } from "./address";
import type { SpreadsheetTable } from "./survey";
import type { CellContent } from "./plan";

/** A cell to write. Without a number format, the cell keeps its own, or takes that of `copyFormatsFrom`. */
export interface PatchCell {
  readonly content: CellContent;
  readonly numberFormat?: string;
}

/** Cells to write into an existing sheet. All of them must be blank, even those that stay blank; `mayReplace` allows exceptions. */
export interface CellPatch {
  readonly sheet: string;
  readonly at: CellAddress;
  /** Row by row from `at`, all of the same length; null stays blank. */
  readonly cells: readonly (readonly (PatchCell | null)[])[];
  /** Whether a cell with this content may be overwritten; a formula is passed as text. */
  readonly mayReplace?: (holds: Cell) => boolean;
  /** The column whose formats the new cells copy, row by row; or the row whose formats they copy, column by column. */
  readonly copyFormatsFrom?: { readonly column: number } | { readonly row: number };
  /** The spreadsheet table that these columns extend to the right. */
  readonly table?: Pick<SpreadsheetTable, "name" | "area">;
}

/** Undoes a write exactly. Throws an InputError if a cell has changed since. If canceled, it leaves what was written. */
export type Undo = (run?: ProgressMonitor) => Promise<void>;

export const patchArea = ({ at, cells }: CellPatch): Area => ({
  from: at,
  to: { row: at.row + cells.length - 1, column: at.column + (cells[0]?.length ?? 1) - 1 },
});

/** The area whose formats a slice of the patch copies; undefined if it copies none. */
export const formatSource = ({ copyFormatsFrom }: CellPatch, { from, to }: Area): Area | undefined =>
  copyFormatsFrom && { from: { ...from, ...copyFormatsFrom }, to: { ...to, ...copyFormatsFrom } };

/** A filled cell where a patch would write. */
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

/** Throws an InputError if a cell no longer holds what was written to it. */
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
