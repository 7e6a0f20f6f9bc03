import { restoreErrors } from "./restoreErrors";
import type { Book } from "./book/book";
import type { SaveOptions } from "./write/writeBook";
import { openXlsx, saveXlsx, type XlsxFile } from "./xlsxFile";
import { readZip } from "./package/zip";

/** Reading or writing a file, as a message to a worker. It takes seconds for 100,000 cells, and the user goes on typing. */
export type FileJob =
  | { readonly kind: "read"; readonly bytes: Uint8Array }
  | {
      readonly kind: "write";
      /** The opened file, its cells as stored, and the workbook after its first calculation. */
      readonly from?: { readonly bytes: Uint8Array; readonly inFile: Book; readonly calculated: Book };
      readonly now: Book;
      readonly options: SaveOptions;
    };

export interface FileAnswer {
  readonly read: Pick<XlsxFile, "book" | "notShown">;
  readonly write: {
    /** Undefined where nothing has changed: the file stays as it is. */
    readonly changed?: Uint8Array;
  };
}

export const doFileJob = (job: FileJob): FileAnswer[FileJob["kind"]] => {
  if (job.kind === "read") {
    const { book, notShown } = openXlsx(job.bytes);
    return { book, notShown };
  }
  const from = job.from && {
    file: { bytes: job.from.bytes, parts: readZip(job.from.bytes), book: restoreErrors(job.from.inFile) },
    calculated: restoreErrors(job.from.calculated),
  };
  const bytes = saveXlsx(from, restoreErrors(job.now), job.options);
  return bytes === from?.file.bytes ? {} : { changed: bytes };
};
