import { restoreErrors } from "../../../xlsx/restoreErrors";
import type { FileAnswer, FileJob } from "../../../xlsx/fileJob";

/** Runs a job elsewhere, and stops it if `signal` aborts. */
export type SendJob = (job: FileJob, signal: AbortSignal) => Promise<FileAnswer[FileJob["kind"]]>;

type WriteJob = Omit<Extract<FileJob, { kind: "write" }>, "kind">;

export interface FileWork {
  read(bytes: Uint8Array, signal: AbortSignal): Promise<FileAnswer["read"]>;
  write(job: WriteJob, signal: AbortSignal): Promise<FileAnswer["write"]>;
}

/** Reads and writes files outside the page's own thread, so typing isn't held up. */
export const fileWork = (send: SendJob): FileWork => ({
  read: async (bytes, signal) => {
    const { book, notShown } = (await send({ kind: "read", bytes }, signal)) as FileAnswer["read"];
    return { book: restoreErrors(book), notShown };
  },
  write: async (job, signal) => (await send({ kind: "write", ...job }, signal)) as FileAnswer["write"],
});
