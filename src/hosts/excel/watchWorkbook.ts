import type { ExcelEntry } from "./ranges/excelEntry";

/** Calls the listener when the selection, a cell or a result changes. Returns how to stop. */
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
  // Even without events, the listener reads the workbook once.
  added.then(tell, tell);
  return () => {
    isListening = false;
    added
      .then(({ context, handlers }) =>
        // Excel removes a handler only in the context in which it was added.
        excel.run(context, async () => {
          for (const handler of handlers) handler.remove();
          await context.sync();
        }),
      )
      // A handler that was never added or stays calls nobody: `isListening` is false.
      .catch(() => undefined);
  };
};
