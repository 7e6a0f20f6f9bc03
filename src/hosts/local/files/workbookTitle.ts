import type { Book } from "../../../xlsx/book/book";

/** A takeoff's first cell: `Roof takeoff: Barn, north yard`. */
const JOB = /^Roof takeoff: (.+)$/;

/** What someone would call a workbook that has no file yet: its last job, or else its first sheet. */
export const workbookTitle = ({ sheets }: Book): string => {
  const jobs = sheets.flatMap(({ cells }) => JOB.exec(String(cells.get(0)?.get(0)?.value ?? ""))?.[1] ?? []);
  return jobs.at(-1) ?? sheets[0]?.name ?? "";
};
