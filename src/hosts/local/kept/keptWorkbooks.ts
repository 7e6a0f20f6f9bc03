import type { KeptWorkbook } from "../../../pane/parts/paneHost";
import type { SourceFile } from "../files/workbookFiles";
import type { KeptState } from "./keptState";

/** A kept state as a file to open. */
export const sourceOf = ({ name, fileName, isInFile }: KeptState, bytes: Uint8Array): SourceFile => ({
  name: fileName ?? `${name}.xlsx`,
  bytes,
  isNamed: fileName !== undefined,
  isInFile,
});

/** The states by workbook, in the order of the newest state of each. */
export const keptWorkbooks = (
  newestFirst: readonly KeptState[],
  openHere: string,
  open: ReadonlySet<string>,
): KeptWorkbook[] => {
  const workbooks = [...new Set(newestFirst.map(({ workbook }) => workbook))];
  return workbooks.map((workbook): KeptWorkbook => {
    const states = newestFirst.filter((state) => state.workbook === workbook);
    const [{ name, isInFile }] = states as [KeptState, ...KeptState[]];
    return {
      workbook,
      name,
      isInFile,
      ...(workbook === openHere
        ? { openIn: "this tab" as const }
        : open.has(workbook) && { openIn: "another tab" as const }),
      versions: states.map(({ id, keptAt }) => ({ id, keptAt })),
      sizeBytes: states.reduce((sum, { sizeBytes }) => sum + sizeBytes, 0),
    };
  });
};
