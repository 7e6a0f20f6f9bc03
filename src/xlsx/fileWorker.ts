import { errorMessage } from "../workbook/errorMessage";
import { doFileJob, type FileJob } from "./fileJob";

/** A worker's answer: its result, or an error message. */
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
