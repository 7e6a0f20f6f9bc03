import { createContext } from "preact";
import { useContext, useState } from "preact/hooks";

/** How many times another workbook has been opened. */
export const WorkbookCount = createContext(0);

/** Like useState, but the value is dropped when another workbook is opened. */
export const useWorkbookState = <T>(): [T | undefined, (value: T | undefined) => void] => {
  const opened = useContext(WorkbookCount);
  const [kept, keep] = useState<{ readonly value: T | undefined; readonly opened: number }>();
  return [kept?.opened === opened ? kept.value : undefined, (value) => keep({ value, opened })];
};
