import type { PageWorkbook } from "../workbook/pageWorkbook";
import type { StopListening, WorkbookEvents } from "../workbook/workbookEvents";

interface ReplaceableWorkbook {
  /** Always the workbook that is on the page now. Listeners stay when it is replaced. */
  readonly workbook: PageWorkbook;
  replace(next: PageWorkbook): void;
}

/** A workbook that another can replace while the pane keeps using it. */
export const replaceableWorkbook = (first: PageWorkbook): ReplaceableWorkbook => {
  let current = first;
  const listening = new Set<{ start: () => StopListening; stop: StopListening }>();
  const listen = (start: () => StopListening): StopListening => {
    const each = { start, stop: start() };
    listening.add(each);
    return () => {
      each.stop();
      listening.delete(each);
    };
  };
  const events: WorkbookEvents = {
    onSelection: (listener) => listen(() => current.onSelection(listener)),
    onChange: (listener) => listen(() => current.onChange(listener)),
    onCalculated: (listener) => listen(() => current.onCalculated(listener)),
    onEdited: (listener) => listen(() => current.onEdited(listener)),
  };
  return {
    workbook: new Proxy(first, {
      get: (_, member): unknown => Reflect.get(member in events ? events : current, member),
    }),
    replace: (next) => {
      current = next;
      for (const each of listening) each.stop = each.start();
    },
  };
};
