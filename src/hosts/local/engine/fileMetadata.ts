import type { Nullable, Worksheet } from "@univerjs/core";
import type { BookSheet, BookTable } from "../../../xlsx/book/book";

/** What a file states about a sheet and the engine has no place for. */
export interface FileMetadata {
  readonly isProtected: boolean;
  /** Styles of cells that may be edited even on a protected sheet. */
  readonly unlockedStyles: readonly string[];
  /** Whether a filter hides rows. */
  readonly isFiltered: boolean;
  readonly tables: readonly BookTable[];
}

const NO_METADATA: FileMetadata = { isProtected: false, unlockedStyles: [], isFiltered: false, tables: [] };

const KEY = "fileMetadata";

/** As custom data of a sheet, which the engine only stores. */
export const fileMetadataConfig = (
  { isProtected = false, isFiltered = false, tables = [] }: BookSheet,
  unlockedStyles: readonly string[],
) => ({ custom: { [KEY]: { isProtected, unlockedStyles, isFiltered, tables } satisfies FileMetadata } });

export const readFileMetadata = (custom: Nullable<Readonly<Record<string, unknown>>>): FileMetadata =>
  (custom?.[KEY] as FileMetadata | undefined) ?? NO_METADATA;

export const fileMetadataOf = (sheet: Worksheet): FileMetadata => readFileMetadata(sheet.getConfig().custom);
