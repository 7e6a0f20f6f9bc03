import { useEffect, useState } from "preact/hooks";
import type { Host } from "../hosts/host";

/** Changes come in bursts: a calculation touches many cells. */
const SETTLE_MS = 60;

/**
 * What is read of the workbook, read again whenever the selection or a cell changes while a person looks. `read` must be
 * the same function each time. Nothing is read for a place of the pane that is not in front.
 */
export const useWatched = <T>(
  host: Host,
  isShown: boolean,
  read: (host: Host) => Promise<T>,
): T | undefined => {
  const [seen, setSeen] = useState<T>();
  useEffect(() => {
    if (!isShown) return undefined;
    let timer: ReturnType<typeof setTimeout> | undefined;
    // A look that was begun earlier may end later: only the latest one counts.
    let latest = 0;
    const stop = host.watch(() => {
      clearTimeout(timer);
      timer = setTimeout(() => {
        const mine = ++latest;
        void read(host).then((now) => {
          if (mine === latest) setSeen(() => now);
        });
      }, SETTLE_MS);
    });
    return () => {
      clearTimeout(timer);
      latest = -1;
      stop();
    };
  }, [host, isShown, read]);
  return seen;
};
