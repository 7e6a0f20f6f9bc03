import { useEffect, useState } from "preact/hooks";
import type { Host } from "../../workbook/host";

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
    // One look at a time: what changes while a long sheet is read is seen by another look, after it.
    let isLooking = false;
    let isBehind = false;
    let isStopped = false;
    const look = async (): Promise<void> => {
      isBehind = isLooking;
      if (isLooking) return;
      isLooking = true;
      try {
        const now = await read(host);
        if (!isStopped) setSeen(() => now);
      } finally {
        isLooking = false;
        if (isBehind && !isStopped) void look();
      }
    };
    const stop = host.watch(() => {
      clearTimeout(timer);
      timer = setTimeout(() => void look(), SETTLE_MS);
    });
    return () => {
      clearTimeout(timer);
      isStopped = true;
      stop();
    };
  }, [host, isShown, read]);
  return seen;
};
