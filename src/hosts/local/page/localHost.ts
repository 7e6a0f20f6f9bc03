import type { KeptWorkbooks, PaneHost, SelectedCell, WorkbookFiles } from "../../../pane/parts/paneHost";
import { a1 } from "../../../workbook/address";
import { downloadClass } from "../files/downloadClass";
import { KEPT_RULE } from "../kept/statesToDrop";
import { textAtFullPrecision } from "../engineFixes/fullPrecisionEditing";
import type { PageWorkbook } from "../workbook/pageWorkbook";
import type { ShownCell } from "../workbook/shownCell";

/** Digits beyond these are rounding noise of binary arithmetic. */
const DIGITS = 12;

/** A cell's value as text; a date and a percentage as such, because the number behind them means little to a reader. */
const shownText = ({ value, format }: ShownCell): string => {
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value !== "number") return value ?? "";
  const rounded = Number.isInteger(value) ? value : Number(value.toPrecision(DIGITS));
  return textAtFullPrecision(rounded, format) ?? String(rounded);
};

const watched = (cell: ShownCell): SelectedCell => ({
  address: `${cell.sheet}, ${a1(cell)}`,
  shows: shownText(cell),
  formula: cell.formula,
  sentence: cell.errorMessage,
});

/** The workbook, after the cell that is being edited is committed. */
const withEditCommitted = async (ready: Promise<PageWorkbook>): Promise<PageWorkbook> => {
  const workbook = await ready;
  await workbook.finishEditing();
  return workbook;
};

/** Starts listening once there is something to listen to; returns how to stop, also before that. */
const startLate = <Source>(
  source: Promise<Source>,
  start: (source: Source) => (() => void)[],
): (() => void) => {
  let stops: (() => void)[] = [];
  let isStopped = false;
  void source.then((loaded) => {
    if (!isStopped) stops = start(loaded);
  });
  return () => {
    isStopped = true;
    for (const stop of stops) stop();
  };
};

/** The local workbook as the pane's host. The pane is shown before the workbook, so every call waits for it. */
export const localHost = (
  ready: Promise<PageWorkbook>,
  files: WorkbookFiles,
  keeper: Promise<Omit<KeptWorkbooks, "rule">>,
): PaneHost => ({
  title: "the local workbook",
  keyboardHint: "Press F6 to switch between the sheet and this pane.",
  files,
  kept: {
    rule: KEPT_RULE,
    watch: (listener) => startLate(keeper, ({ watch }) => [watch(listener)]),
    list: async () => (await keeper).list(),
    restore: async (version, run) => (await keeper).restore(version, run),
    drop: async (workbook) => (await keeper).drop(workbook),
    clear: async () => (await keeper).clear(),
  },
  handOut: downloadClass,
  existing: async () => (await ready).existing(),
  addSheets: async (plan) => (await withEditCommitted(ready)).addSheets(plan),
  survey: async () => (await ready).survey(),
  putCells: async (patch, run) => (await withEditCommitted(ready)).putCells(patch, run),
  activeSheet: async () => (await ready).activeSheet(),
  contents: async () => (await withEditCommitted(ready)).contents(),
  namedRange: async (name) => (await ready).namedRange(name),
  putPicture: async (picture) => (await ready).putPicture(picture),
  watch: (listener) =>
    startLate(ready, (workbook) => {
      listener();
      return [workbook.onSelection(listener), workbook.onChange(listener), workbook.onCalculated(listener)];
    }),
  watchCell: (listener) => {
    void ready.then((workbook) => {
      let last: ShownCell | undefined;
      const report = (cell: ShownCell): void => {
        last = cell;
        listener(watched(cell));
      };
      workbook.onSelection(report);
      // The selected cell may also change by a calculation or by Undo. If another workbook was opened, its sheet may be gone.
      const reportAgain = (): void => {
        if (last && workbook.existing().sheets.includes(last.sheet)) report(workbook.getCell(last));
      };
      workbook.onCalculated(reportAgain);
      workbook.onChange(reportAgain);
    });
  },
});
