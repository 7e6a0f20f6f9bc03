import type { Book } from "./book/book";
import { readBook } from "./read/readBook";
import { countNotShown, contentNotShown, type SheetNotShown } from "./read/notShown";
import { refuseSigned, writeBook, type Opened, type SaveOptions } from "./write/writeBook";
import { readZip, writeZip, type Parts } from "./package/zip";

/** An .xlsx file that is open: its bytes, its parts, and what its cells hold. */
export interface XlsxFile {
  readonly bytes: Uint8Array;
  readonly parts: Parts;
  readonly book: Book;
  /** What it holds that isn't shown, in words: `2 charts`. All of it stays in the file. */
  readonly notShown: readonly string[];
}

/** Opens a workbook, or says in a sentence why not (`FileError`). */
export const openXlsx = (bytes: Uint8Array): XlsxFile => {
  const parts = readZip(bytes);
  const inSheets: SheetNotShown[] = [];
  const book = readBook(parts, (sheet, overCells) =>
    inSheets.push({ counts: countNotShown(sheet), ...overCells }),
  );
  return { bytes, parts, book, notShown: contentNotShown(parts, inSheets) };
};

const isSame = (before: Parts, now: Parts): boolean =>
  before.size === now.size && [...now].every(([path, part]) => before.get(path) === part);

/** A file that was opened, and the workbook as it stood when it had been calculated. */
export interface SaveFrom {
  readonly file: Omit<XlsxFile, "notShown">;
  readonly calculated: Book;
}

/**
 * The file with what has changed since `calculated`. A workbook that came from no file is written whole. Where nothing has
 * changed, the file is the very same.
 */
export const saveXlsx = (from: SaveFrom | undefined, now: Book, options?: SaveOptions): Uint8Array => {
  const opened: Opened | undefined = from && {
    parts: from.file.parts,
    inFile: from.file.book,
    calculated: from.calculated,
  };
  const parts = writeBook(opened, now, options);
  if (!from) return writeZip(parts);
  if (isSame(from.file.parts, parts)) return from.file.bytes;
  refuseSigned(parts);
  return writeZip(parts);
};
