import { useMemo } from "preact/hooks";
import type { Host } from "../../hosts/host";
import { signedSheetsOf } from "../../sheets/changeOrder/addChangeOrder";
import { agreedChangeOrdersIn } from "../../sheets/changeOrder/earlier";
import { useWatched } from "../useWatched";

/** Sheets that a person can choose from. */
export interface SheetLists {
  readonly signed: readonly string[];
  readonly changeOrders: readonly string[];
}

export const NO_SHEETS: SheetLists = { signed: [], changeOrders: [] };

/** The signed sheets and agreed change orders of the workbook; all of it is read again only when its sheets are others than before. */
const readerOfLists = () => {
  let sheetsThen = "";
  let lists = NO_SHEETS;
  return async (host: Host): Promise<SheetLists> => {
    const sheetsNow = (await host.existing()).sheets.join("\n");
    if (sheetsNow === sheetsThen) return lists;
    const contents = await host.contents();
    sheetsThen = sheetsNow;
    lists = {
      signed: signedSheetsOf(contents),
      changeOrders: agreedChangeOrdersIn(contents).map(({ sheet }) => sheet),
    };
    return lists;
  };
};

export const useSheetLists = (host: Host, isShown: boolean): SheetLists => {
  const read = useMemo(readerOfLists, []);
  return useWatched(host, isShown, read) ?? NO_SHEETS;
};
