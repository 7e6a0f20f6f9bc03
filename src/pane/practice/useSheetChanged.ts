import { useCallback, useEffect } from "preact/hooks";
import type { Host } from "../../workbook/host";
import type { ActiveSheet } from "../../workbook/activeSheet";
import { useLiveQuery } from "../parts/useLiveQuery";

/** The sheet and its cells, without the selection. */
const contentOf = ({ sheet, cells }: ActiveSheet): string => JSON.stringify([sheet, cells]);

/** Calls back when the active sheet is no longer the one in `view`, or its cells have changed. */
export const useSheetChanged = (host: Host, view: ActiveSheet | undefined, onChanged: () => void): void => {
  const read = useCallback(
    async (from: Host) => {
      const now = await from.activeSheet().catch(() => undefined);
      return { view, isChanged: view !== undefined && (!now || contentOf(now) !== contentOf(view)) };
    },
    [view],
  );
  const seen = useLiveQuery(host, view !== undefined, read);
  useEffect(() => {
    // A result for an earlier view doesn't count.
    if (view && seen?.view === view && seen.isChanged) onChanged();
  }, [seen]);
};
