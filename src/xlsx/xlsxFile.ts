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
  /** What it has that isn't shown, such as `2 charts`. All of it stays in the file. */
  readonly notShown: readonly string[];
}

/** Opens a workbook, or throws a `FileError`. */
export const openXlsx = (bytes: Uint8Array): XlsxFile => {
  const parts = readZip(bytes);
  const inSheets: SheetNotShown[] = [];
  const book = readBook(parts, (sheet, drawings) =>
    inSheets.push({ counts: countNotShown(sheet), ...drawings }),
  );
  return { bytes, parts, book, notShown: contentNotShown(parts, inSheets) };
};

const isSame = (before: Parts, now: Parts): boolean =>
  before.size === now.size && [...now].every(([path, part]) => before.get(path) === part);

/** An opened file, and the workbook after its first calculation. */
export interface SaveFrom {
  readonly file: Omit<XlsxFile, "notShown">;
  readonly calculated: Book;
}

/**
 * The file with what has changed since `calculated`, or a new file where there is none to start from. Where nothing has
 * changed, the result is the same bytes.
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
