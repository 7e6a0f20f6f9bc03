import type { PaneHost, WatchedCell, WorkbookFiles } from "../../../pane/parts/paneHost";
import { a1 } from "../../../workbook/address";
import { downloadClass } from "../files/downloadClass";
import { textAtFullPrecision } from "../engineFixes/fullPrecisionEditing";
import type { PageWorkbook, ShownCell } from "../workbook/pageWorkbook";

/** Digits beyond these are noise of binary arithmetic. */
const DIGITS = 12;

/** A date as a date, a share as one: the number alone that a cell keeps of them says little. */
const inWords = ({ value, format }: ShownCell): string => {
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value !== "number") return value ?? "";
  const rounded = Number.isInteger(value) ? value : Number(value.toPrecision(DIGITS));
  return textAtFullPrecision(rounded, format) ?? String(rounded);
};

const watched = (cell: ShownCell): WatchedCell => ({
  address: `${cell.sheet}, ${a1(cell)}`,
  shows: inWords(cell),
  formula: cell.formula,
  sentence: cell.errorMessage,
});

/** The workbook with what is just being typed in it. */
const whole = async (ready: Promise<PageWorkbook>): Promise<PageWorkbook> => {
  const workbook = await ready;
  await workbook.finishEditing();
  return workbook;
};

/** The local workbook as the pane's host. The pane is there before the workbook, so everything waits for it. */
export const localHost = (ready: Promise<PageWorkbook>, files: WorkbookFiles): PaneHost => ({
  title: "the local workbook",
  keyboardHint: "F6 goes between the sheet and this pane.",
  files,
  handOut: downloadClass,
  existing: async () => (await ready).existing(),
  write: async (plan) => (await whole(ready)).write(plan),
  survey: async () => (await ready).survey(),
  put: async (patch, run) => (await whole(ready)).put(patch, run),
  inView: async () => (await ready).inView(),
  contents: async () => (await whole(ready)).contents(),
  named: async (name) => (await ready).named(name),
  putPicture: async (picture) => (await ready).putPicture(picture),
  watch: (listener) => {
    const stops: (() => void)[] = [];
    let isStopped = false;
    void ready.then((workbook) => {
      if (isStopped) return;
      stops.push(
        workbook.onSelection(listener),
        workbook.onChange(listener),
        workbook.onCalculated(listener),
      );
      listener();
    });
    return () => {
      isStopped = true;
      for (const stop of stops) stop();
    };
  },
  watchCell: (listener) => {
    void ready.then((workbook) => {
      let last: ShownCell | undefined;
      const tell = (cell: ShownCell): void => {
        last = cell;
        listener(watched(cell));
      };
      workbook.onSelection(tell);
      // The selected cell may change without being left: by a calculation, or by Undo. Another workbook may have come,
      // without its sheet.
      const again = (): void => {
        if (last && workbook.existing().sheets.includes(last.sheet)) tell(workbook.getCell(last));
      };
      workbook.onCalculated(again);
      workbook.onChange(again);
    });
  },
});
