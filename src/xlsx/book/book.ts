import type { IStyleData } from "@univerjs/core";
import type { Cell } from "../../../shared/cell";
import type { CellAddress } from "../../workbook/address";
import type { InputPrompt, PrintableSheet } from "../../workbook/printableSheet";
import type { Print } from "../../workbook/plan";

/** A workbook as plain values, between a file and the engine: what both can say of cells and sheets. */
export interface BookCell {
  /** For a formula, its last result. */
  readonly value: Cell;
  /** As a person reads it, with the equals sign. */
  readonly formula?: string;
  /** How many cells its result fills, where that is more than its own. */
  readonly spill?: { readonly rows: number; readonly columns: number };
  /** Filled by the formula of a cell above or to the left. */
  readonly isSpilled?: boolean;
  /** A key of the book's styles. */
  readonly style?: string;
}

/** A row or a column; undefined is as usual. */
export interface BookRowOrColumn {
  readonly sizePx?: number;
  readonly isHidden?: boolean;
  readonly style?: string;
}

export interface DropDown {
  /** `B4:B9` */
  readonly ranges: readonly string[];
  readonly choices: readonly string[];
  /** Where the words stand, where they stand in cells: `Lists!$A$1:$A$4`. */
  readonly from?: string;
}

/** A table of the spreadsheet's own. */
export interface BookTable {
  readonly name: string;
  /** `A1:C9`, its heading and total rows included. */
  readonly range: string;
  readonly columns: readonly string[];
  readonly hasHeadings: boolean;
  readonly hasTotals: boolean;
  /** Its filter leaves rows out. */
  readonly hidesRows: boolean;
}

/** A picture over the cells. */
export interface BookPicture {
  readonly at: CellAddress;
  /** From the corner of the cell that it begins in. */
  readonly offsetPx?: { readonly x: number; readonly y: number };
  /** In pixels. */
  readonly width: number;
  readonly height: number;
  readonly png: Uint8Array;
  readonly svg?: Uint8Array;
}

/** A place over the cells: from the upper left corner of one. */
export interface AnchorPoint extends CellAddress {
  readonly offsetPx: { readonly x: number; readonly y: number };
}

/** A picture or a drawing that a file holds, to be looked at: the file keeps its own. */
export interface FilePicture {
  readonly from: AnchorPoint;
  /** Where it ends, or how large it is. */
  readonly to: AnchorPoint | { readonly widthPx: number; readonly heightPx: number };
  /** For those who can't see it; empty where the file says nothing. */
  readonly description: string;
  /** The picture itself, as an address that holds all of it. */
  readonly source: string;
}

export interface BookSheet {
  readonly name: string;
  /** The engine's own, by which a sheet is known again under another name. */
  readonly id?: string;
  readonly isHidden: boolean;
  /** The file doesn't let its cells be changed. */
  readonly isProtected?: boolean;
  /** A filter of the file hides rows. */
  readonly isFiltered?: boolean;
  readonly tables?: readonly BookTable[];
  /** By row, then by column, counted from 0. */
  readonly cells: ReadonlyMap<number, ReadonlyMap<number, BookCell>>;
  readonly rows: ReadonlyMap<number, BookRowOrColumn>;
  readonly columns: ReadonlyMap<number, BookRowOrColumn>;
  readonly defaultRowPx?: number;
  readonly defaultColumnPx?: number;
  /** `A1:C1` */
  readonly merges: readonly string[];
  readonly frozen: { readonly rows: number; readonly columns: number };
  readonly dropDowns: readonly DropDown[];
  /** How it goes to paper; undefined: as the file has it, or as usual. */
  readonly print?: Print;
  /** Cells that are typed into, with what is told there. Only a new sheet has any. */
  readonly entries?: readonly InputPrompt[];
  /** Rows with which a new page begins. Only a new sheet has any. */
  readonly breaksBefore?: PrintableSheet["pageBreaksBefore"];
  /** A drawing over the cells. Only a new sheet has one. */
  readonly drawing?: PrintableSheet["drawing"];
  /** Pictures that were put on it since it was opened. */
  readonly pictures?: readonly BookPicture[];
  /** Pictures and drawings of its file that can be shown. They are never written. */
  readonly filePictures?: readonly FilePicture[];
}

export interface BookName {
  readonly name: string;
  /** The sheet that it is known on; undefined: everywhere. */
  readonly sheet?: string;
  /** A range such as `'Panel'!$B$4`, or a formula that begins with an equals sign. */
  readonly target: string;
}

export interface Book {
  readonly sheets: readonly BookSheet[];
  readonly names: readonly BookName[];
  readonly styles: ReadonlyMap<string, IStyleData>;
  /** Styles of cells that may be changed on a protected sheet. */
  readonly unlockedStyles?: readonly string[];
}

/** The key of a style that came from a file: its number there. */
export const fileStyleKey = (index: number): string => `xf-${index}`;

export const fileStyleIndex = (key: string | undefined): number | undefined => {
  const digits = /^xf-([0-9]+)$/.exec(key ?? "")?.[1];
  return digits === undefined ? undefined : Number(digits);
};
