import type { WorkerAnswer } from "../../../xlsx/fileWorker";
import type { FileAnswer, FileJob } from "../../../xlsx/fileJob";
import type { SendJob } from "./fileWork";

/** A worker that can't be loaded gives no reason: the server was stopped, or can't be reached. */
const NOT_LOADED =
  "this page's files can't be loaded. If npm start serves the page, check that it is still running; if not, check that you are online. Then try again without closing the page";

/** Runs a job in its own worker, which ends with the job or when it is canceled. */
export const sendToWorker: SendJob = (job, signal) =>
  new Promise((resolve, reject) => {
    signal.throwIfAborted();
    const worker = new Worker(new URL("../../../xlsx/fileWorker.ts", import.meta.url));
    const end = (): void => {
      worker.terminate();
      signal.removeEventListener("abort", cancel);
    };
    const cancel = (): void => {
      end();
      reject(signal.reason as Error);
    };
    signal.addEventListener("abort", cancel);
    worker.addEventListener("message", ({ data }: MessageEvent<WorkerAnswer>) => {
      end();
      if ("failure" in data) reject(new Error(data.failure));
      else resolve(data.done as FileAnswer[FileJob["kind"]]);
    });
    worker.addEventListener("error", ({ message }) => {
      end();
      reject(new Error(`The file couldn't be processed: ${message || NOT_LOADED}.`));
    });
    worker.postMessage(job);
  });
