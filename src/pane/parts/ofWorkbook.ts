import { createContext } from "preact";
import { useContext, useState } from "preact/hooks";

/** How many workbooks were opened in the place of another. */
export const OpenedWorkbooks = createContext(0);

/** What a card keeps of the workbook shown: gone once another one is. */
export const useOfWorkbook = <T>(): [T | undefined, (value: T | undefined) => void] => {
  const opened = useContext(OpenedWorkbooks);
  const [kept, keep] = useState<{ readonly value: T | undefined; readonly opened: number }>();
  return [kept?.opened === opened ? kept.value : undefined, (value) => keep({ value, opened })];
};
