import type { Nullable, Worksheet } from "@univerjs/core";
import type { BookSheet, BookTable } from "../../../xlsx/book/book";

/** What a sheet's file says of it and the engine has no place of its own for. */
export interface FileMetadata {
  readonly isProtected: boolean;
  /** Looks of cells that may be changed even then. */
  readonly unlockedStyles: readonly string[];
  /** A filter hides rows. */
  readonly isFiltered: boolean;
  readonly tables: readonly BookTable[];
}

const NO_METADATA: FileMetadata = { isProtected: false, unlockedStyles: [], isFiltered: false, tables: [] };

const KEY = "ofFile";

/** As the engine keeps what is not its own business. */
export const fileMetadataConfig = (
  { isProtected = false, isFiltered = false, tables = [] }: BookSheet,
  unlockedStyles: readonly string[],
) => ({ custom: { [KEY]: { isProtected, unlockedStyles, isFiltered, tables } satisfies FileMetadata } });

export const readFileMetadata = (custom: Nullable<Readonly<Record<string, unknown>>>): FileMetadata =>
  (custom?.[KEY] as FileMetadata | undefined) ?? NO_METADATA;

export const fileMetadataOf = (sheet: Worksheet): FileMetadata => readFileMetadata(sheet.getConfig().custom);
