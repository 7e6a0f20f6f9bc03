import type { ExcelEntry } from "./ranges/excelEntry";

/** Calls back when the selection, a cell or a result changes; returns how to stop. */
export const watchWorkbook = (excel: ExcelEntry, listener: () => void): (() => void) => {
  let isListening = true;
  const tell = (): void => {
    if (isListening) listener();
  };
  const onEvent = (): Promise<void> => {
    tell();
    return Promise.resolve();
  };
  const added = excel.run(async (context) => {
    const { workbook } = context;
    const { worksheets } = workbook;
    const handlers = [
      workbook.onSelectionChanged.add(onEvent),
      worksheets.onChanged.add(onEvent),
      worksheets.onCalculated.add(onEvent),
      worksheets.onActivated.add(onEvent),
    ];
    await context.sync();
    return { context, handlers };
  });
  // Where Excel tells of no changes, there is something to see even so.
  added.then(tell, tell);
  return () => {
    isListening = false;
    added
      .then(({ context, handlers }) =>
        // Excel removes a handler in the context only in which it was added.
        excel.run(context, async () => {
          for (const handler of handlers) handler.remove();
          await context.sync();
        }),
      )
      // One that was never there, or stays, tells nobody anything any more.
      .catch(() => undefined);
  };
};
