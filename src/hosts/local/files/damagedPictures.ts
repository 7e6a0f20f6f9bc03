import type { Book, BookSheet, FilePicture } from "../../../xlsx/book/book";

interface DrawableBook {
  readonly book: Book;
  /** The number of pictures left out. */
  readonly damaged: number;
}

/** A file's book without the pictures that the browser can't draw; the grid would stop at the first of them. */
export const withoutDamagedPictures = async (
  book: Book,
  canBeDrawn: (source: string) => Promise<boolean>,
  signal: AbortSignal,
): Promise<DrawableBook> => {
  const known = new Map<string, boolean>();
  let damaged = 0;
  const drawable = async (pictures: readonly FilePicture[]): Promise<FilePicture[]> => {
    const kept: FilePicture[] = [];
    for (const picture of pictures) {
      signal.throwIfAborted();
      const can = known.get(picture.source) ?? (await canBeDrawn(picture.source));
      known.set(picture.source, can);
      if (can) kept.push(picture);
      else damaged++;
    }
    return kept;
  };
  const sheets: BookSheet[] = [];
  for (const sheet of book.sheets)
    sheets.push(sheet.filePictures ? { ...sheet, filePictures: await drawable(sheet.filePictures) } : sheet);
  return { book: { ...book, sheets }, damaged };
};
