import type { WorkerAnswer } from "../../../xlsx/fileWorker";
import type { FileAnswer, FileJob } from "../../../xlsx/fileJob";
import type { SendJob } from "./fileWork";

/** A worker that can't be loaded at all gives no reason: the page's server was stopped meanwhile, or is out of reach. */
const NOT_LOADED =
  "this page's files can't be loaded. If npm start serves it, see that it still runs there; if not, that you are online. Then try again, without closing the page";

/** Does a job in a worker of its own, which ends with it or where it is canceled. */
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
      reject(new Error(`The file couldn't be worked on: ${message || NOT_LOADED}.`));
    });
    worker.postMessage(job);
  });
