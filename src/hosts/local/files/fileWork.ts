import { restoreErrors } from "../../../xlsx/restoreErrors";
import type { FileAnswer, FileJob } from "../../../xlsx/fileJob";

/** Does a job somewhere else, and drops it where it is canceled. */
export type SendJob = (job: FileJob, signal: AbortSignal) => Promise<FileAnswer[FileJob["kind"]]>;

type WriteJob = Omit<Extract<FileJob, { kind: "write" }>, "kind">;

export interface FileWork {
  read(bytes: Uint8Array, signal: AbortSignal): Promise<FileAnswer["read"]>;
  write(job: WriteJob, signal: AbortSignal): Promise<FileAnswer["write"]>;
}

/** Reading and writing files beside the page, so that nobody waits to type. */
export const fileWork = (send: SendJob): FileWork => ({
  read: async (bytes, signal) => {
    const { book, notShown } = (await send({ kind: "read", bytes }, signal)) as FileAnswer["read"];
    return { book: restoreErrors(book), notShown };
  },
  write: async (job, signal) => (await send({ kind: "write", ...job }, signal)) as FileAnswer["write"],
});
