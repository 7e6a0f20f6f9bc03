import { useEffect, useState } from "preact/hooks";
import type { Host } from "../../workbook/host";

/** Changes come in bursts, because a calculation touches many cells. */
const DEBOUNCE_MS = 60;

/**
 * The result of reading the workbook, read again when the selection or a cell changes. `read` must be the same function
 * each time. Nothing is read while the tab isn't shown.
 */
export const useLiveQuery = <T>(
  host: Host,
  isShown: boolean,
  read: (host: Host) => Promise<T>,
): T | undefined => {
  const [result, setResult] = useState<T>();
  useEffect(() => {
    if (!isShown) return undefined;
    let timer: ReturnType<typeof setTimeout> | undefined;
    // One read at a time: changes during a long read are picked up by one more read after it.
    let isReading = false;
    let isBehind = false;
    let isStopped = false;
    const readAgain = async (): Promise<void> => {
      isBehind = isReading;
      if (isReading) return;
      isReading = true;
      try {
        const now = await read(host);
        if (!isStopped) setResult(() => now);
      } finally {
        isReading = false;
        if (isBehind && !isStopped) void readAgain();
      }
    };
    const stop = host.watch(() => {
      clearTimeout(timer);
      timer = setTimeout(() => void readAgain(), DEBOUNCE_MS);
    });
    return () => {
      clearTimeout(timer);
      isStopped = true;
      stop();
    };
  }, [host, isShown, read]);
  return result;
};
