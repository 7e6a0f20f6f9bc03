import type { IStyleData } from "@univerjs/core";
import type { Cell } from "../../../shared/cell";
import type { CellAddress } from "../../workbook/address";
import type { InputPrompt, PrintableSheet } from "../../workbook/printableSheet";
import type { Print } from "../../workbook/plan";

/** A cell of a workbook as plain values, which both the file and the engine can express. */
export interface BookCell {
  /** For a formula, its last result. */
  readonly value: Cell;
  /** As a person reads it, with the equals sign. */
  readonly formula?: string;
  /** The size of its spill range, where that is more than one cell. */
  readonly spill?: { readonly rows: number; readonly columns: number };
  /** Filled by the spilling formula of a cell above or to the left. */
  readonly isSpilled?: boolean;
  /** A key of the book's styles. */
  readonly style?: string;
}

/** A row or a column; undefined means the default. */
export interface BookRowOrColumn {
  readonly sizePx?: number;
  readonly isHidden?: boolean;
  readonly style?: string;
}

export interface DropDown {
  /** `B4:B9` */
  readonly ranges: readonly string[];
  readonly choices: readonly string[];
  /** The cells that hold the choices, if cells do: `Lists!$A$1:$A$4`. */
  readonly from?: string;
}

/** An Excel table (ListObject). */
export interface BookTable {
  readonly name: string;
  /** `A1:C9`, its heading and total rows included. */
  readonly range: string;
  readonly columns: readonly string[];
  readonly hasHeadings: boolean;
  readonly hasTotals: boolean;
  /** Its filter hides rows. */
  readonly hidesRows: boolean;
}

/** A picture over the cells. */
export interface BookPicture {
  readonly at: CellAddress;
  /** From the top left corner of that cell. */
  readonly offsetPx?: { readonly x: number; readonly y: number };
  /** In pixels. */
  readonly width: number;
  readonly height: number;
  readonly png: Uint8Array;
  readonly svg?: Uint8Array;
}

/** A point over the cells, measured from the top left corner of one. */
export interface AnchorPoint extends CellAddress {
  readonly offsetPx: { readonly x: number; readonly y: number };
}

/** A picture or drawing of a file, for viewing only: saving keeps the file's own. */
export interface FilePicture {
  readonly from: AnchorPoint;
  /** Its bottom right corner, or its size. */
  readonly to: AnchorPoint | { readonly widthPx: number; readonly heightPx: number };
  /** Its alternative text; empty where the file has none. */
  readonly description: string;
  /** The picture as a data URL. */
  readonly source: string;
}

export interface BookSheet {
  readonly name: string;
  /** The engine's id, which identifies a sheet after it is renamed. */
  readonly id?: string;
  readonly isHidden: boolean;
  /** The file protects its cells from changes. */
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
  /** Page setup; undefined keeps the file's, or the default. */
  readonly print?: Print;
  /** Input cells with their prompts. Only a new sheet has any. */
  readonly entries?: readonly InputPrompt[];
  /** Rows that start a new page. Only a new sheet has any. */
  readonly breaksBefore?: PrintableSheet["pageBreaksBefore"];
  /** A drawing over the cells. Only a new sheet has one. */
  readonly drawing?: PrintableSheet["drawing"];
  /** Pictures inserted since the file was opened. */
  readonly pictures?: readonly BookPicture[];
  /** Pictures and drawings of the file that can be shown. They are never written. */
  readonly filePictures?: readonly FilePicture[];
}

export interface BookName {
  readonly name: string;
  /** The sheet it is scoped to; undefined for the whole workbook. */
  readonly sheet?: string;
  /** A range such as `'Panel'!$B$4`, or a formula that begins with an equals sign. */
  readonly target: string;
}

export interface Book {
  readonly sheets: readonly BookSheet[];
  readonly names: readonly BookName[];
  readonly styles: ReadonlyMap<string, IStyleData>;
  /** Styles of cells that are unlocked on a protected sheet. */
  readonly unlockedStyles?: readonly string[];
}

/** The key of a file's cell style: its index in `cellXfs`. */
export const fileStyleKey = (index: number): string => `xf-${index}`;

export const fileStyleIndex = (key: string | undefined): number | undefined => {
  const digits = /^xf-([0-9]+)$/.exec(key ?? "")?.[1];
  return digits === undefined ? undefined : Number(digits);
};
