import { useCallback, useEffect } from "preact/hooks";
import type { Host } from "../../workbook/host";
import type { ActiveSheet } from "../../workbook/activeSheet";
import { useWatched } from "../parts/useWatched";

/** What is selected is no matter. */
const written = ({ sheet, cells }: ActiveSheet): string => JSON.stringify([sheet, cells]);

/** Calls back when the sheet in front is no longer as it was in `view`: another one, or with something else in it. */
export const useViewLeft = (host: Host, view: ActiveSheet | undefined, onLeft: () => void): void => {
  const read = useCallback(
    async (from: Host) => {
      const now = await from.activeSheet().catch(() => undefined);
      return { view, isLeft: view !== undefined && (!now || written(now) !== written(view)) };
    },
    [view],
  );
  const seen = useWatched(host, view !== undefined, read);
  useEffect(() => {
    // What was seen of an earlier view says nothing of this one.
    if (view && seen?.view === view && seen.isLeft) onLeft();
  }, [seen]);
};
