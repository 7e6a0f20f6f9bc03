import type { Book } from "./book";
import { readBook } from "./readBook";
import { refuseSigned, writeBook, type Opened, type SaveOptions } from "./writeBook";
import { readZip, writeZip, type Parts } from "./zip";

/** An .xlsx file that is open: its bytes, its parts, and what its cells hold. */
export interface XlsxFile {
  readonly bytes: Uint8Array;
  readonly parts: Parts;
  readonly book: Book;
}

/** Opens a workbook, or says in a sentence why not (`FileError`). */
export const openXlsx = (bytes: Uint8Array): XlsxFile => {
  const parts = readZip(bytes);
  return { bytes, parts, book: readBook(parts) };
};

const isSame = (before: Parts, now: Parts): boolean =>
  before.size === now.size && [...now].every(([path, part]) => before.get(path) === part);

/**
 * The file with what has changed since `calculated`, the workbook as it stood when the opened file had been calculated.
 * A workbook that came from no file is written whole. Where nothing has changed, the file is the very same.
 */
export const saveXlsx = (
  from: { readonly file: XlsxFile; readonly calculated: Book } | undefined,
  now: Book,
  options?: SaveOptions,
): Uint8Array => {
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
