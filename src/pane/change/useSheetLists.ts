import { useMemo } from "preact/hooks";
import type { Host } from "../../workbook/host";
import { signedSheetsOf } from "../../sheets/changeOrder/addChangeOrder";
import { agreedChangeOrdersIn } from "../../sheets/changeOrder/existingChangeOrders";
import { useLiveQuery } from "../parts/useLiveQuery";

/** Sheets that a person can choose from. */
export interface SheetLists {
  readonly signed: readonly string[];
  readonly changeOrders: readonly string[];
  /** The active sheet, of any kind. */
  readonly activeSheetName: string;
}

export const NO_SHEETS: SheetLists = { signed: [], changeOrders: [], activeSheetName: "" };

/** The signed sheets and agreed change orders of the workbook; all of it is read again only when its sheets are others than before. */
const readerOfLists = () => {
  let sheetsThen = "";
  let lists = NO_SHEETS;
  return async (host: Host): Promise<SheetLists> => {
    const { sheets, activeSheetName } = await host.existing();
    const sheetsNow = sheets.join("\n");
    if (sheetsNow === sheetsThen) {
      // The same lists, where they are: who uses them draws nothing again.
      if (activeSheetName !== lists.activeSheetName) lists = { ...lists, activeSheetName };
      return lists;
    }
    const contents = await host.contents();
    sheetsThen = sheetsNow;
    lists = {
      activeSheetName,
      signed: signedSheetsOf(contents),
      changeOrders: agreedChangeOrdersIn(contents).map(({ sheet }) => sheet),
    };
    return lists;
  };
};

export const useSheetLists = (host: Host, isShown: boolean): SheetLists => {
  const read = useMemo(readerOfLists, []);
  return useLiveQuery(host, isShown, read) ?? NO_SHEETS;
};
