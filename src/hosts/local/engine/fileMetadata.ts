import type { Nullable, Worksheet } from "@univerjs/core";
import type { BookSheet, BookTable } from "../../../xlsx/book/book";

/** What a sheet's file says of it and the engine has no place of its own for. */
export interface OfFile {
  readonly isProtected: boolean;
  /** Looks of cells that may be changed even then. */
  readonly unlockedStyles: readonly string[];
  /** A filter hides rows. */
  readonly isFiltered: boolean;
  readonly tables: readonly BookTable[];
}

const NOTHING: OfFile = { isProtected: false, unlockedStyles: [], isFiltered: false, tables: [] };

const KEY = "ofFile";

/** As the engine keeps what is not its own business. */
export const ofFileData = (
  { isProtected = false, isFiltered = false, tables = [] }: BookSheet,
  unlockedStyles: readonly string[],
) => ({ custom: { [KEY]: { isProtected, unlockedStyles, isFiltered, tables } satisfies OfFile } });

export const readOfFile = (custom: Nullable<Readonly<Record<string, unknown>>>): OfFile =>
  (custom?.[KEY] as OfFile | undefined) ?? NOTHING;

export const ofFile = (sheet: Worksheet): OfFile => readOfFile(sheet.getConfig().custom);
