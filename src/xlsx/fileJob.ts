import { restoreErrors } from "./restoreErrors";
import type { Book } from "./book/book";
import type { SaveOptions } from "./write/writeBook";
import { openXlsx, saveXlsx, type XlsxFile } from "./xlsxFile";
import { readZip } from "./package/zip";

/** Reading or writing a file, as a message to a worker: seconds for 100,000 cells, in which a person goes on typing. */
export type FileJob =
  | { readonly kind: "read"; readonly bytes: Uint8Array }
  | {
      readonly kind: "write";
      /** The opened file, what its cells held, and the workbook as it stood when it had been calculated. */
      readonly from?: { readonly bytes: Uint8Array; readonly inFile: Book; readonly calculated: Book };
      readonly now: Book;
      readonly options: SaveOptions;
    };

export interface FileAnswer {
  readonly read: Pick<XlsxFile, "book" | "notShown">;
  readonly write: {
    /** Left out where nothing had changed: the file is the very same. */
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
