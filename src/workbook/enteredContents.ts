import { sheetPrefix } from "./address";

/** A formula; or a value where a cell has no formula. */
export type EnteredContent = string | number | boolean;

/** A workbook's contents as they were entered: formulas and values, not results. */
export interface EnteredContents {
  /** By sheet name, then by A1 address. */
  readonly sheets: ReadonlyMap<string, ReadonlyMap<string, EnteredContent>>;
  /** What each name refers to. */
  readonly names: ReadonlyMap<string, string>;
}

/** A name's key. A name that belongs to one sheet includes that sheet: `'Bid'!Rate`. */
export const nameKey = (name: string, sheet?: string): string =>
  sheet === undefined ? name : `${sheetPrefix(sheet)}${name}`;
