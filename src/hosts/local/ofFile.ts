import type { Nullable, Worksheet } from "@univerjs/core";
import type { BookSheet, BookTable } from "../xlsx/book";

/** What a sheet's file says of it and the engine has no place of its own for. */
export interface OfFile {
  readonly isProtected: boolean;
  /** A filter hides rows. */
  readonly isFiltered: boolean;
  readonly tables: readonly BookTable[];
}

const KEY = "ofFile";

/** As the engine keeps what is not its own business. */
export const ofFileData = ({ isProtected, isFiltered, tables = [] }: BookSheet) => ({
  custom: {
    [KEY]: { isProtected: isProtected ?? false, isFiltered: isFiltered ?? false, tables } satisfies OfFile,
  },
});

export const readOfFile = (custom: Nullable<Readonly<Record<string, unknown>>>): OfFile =>
  (custom?.[KEY] as OfFile | undefined) ?? { isProtected: false, isFiltered: false, tables: [] };

export const ofFile = (sheet: Worksheet): OfFile => readOfFile(sheet.getConfig().custom);
