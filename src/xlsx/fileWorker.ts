import { errorMessage } from "../workbook/errorMessage";
import { doFileJob, type FileJob } from "./fileJob";

/** What a worker answers: the work that is done, or in a sentence why not. */
export type WorkerAnswer = { readonly done: unknown } | { readonly failure: string };

const answer = (job: FileJob): WorkerAnswer => {
  try {
    return { done: doFileJob(job) };
  } catch (failure) {
    return { failure: errorMessage(failure) };
  }
};

addEventListener("message", ({ data }: MessageEvent<FileJob>) => {
  postMessage(answer(data));
});
