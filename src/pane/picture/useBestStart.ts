import { useEffect, useRef, useState } from "preact/hooks";
import { searchBestStart, type BestStart } from "../../../functions/layout/engine/findBestStart";
import { errorMessage } from "../../workbook/errorMessage";
import type { ActivePlane } from "../../sheets/activeSheet/activePlane";

export type Search =
  | { readonly kind: "idle" }
  | { readonly kind: "searching"; readonly weighed: number; readonly choices: number }
  | { readonly kind: "found"; readonly best: BestStart }
  | { readonly kind: "failed"; readonly sentence: string };

/** Long enough to get on, short enough that nobody notices. */
const SLICE_MS = 12;

/** Searches a plane's best start in slices, so that typing goes on and the search can be given up. */
export const useBestStart = (): {
  search: Search;
  begin: (plane: ActivePlane) => void;
  giveUp: () => void;
} => {
  const [search, setSearch] = useState<Search>({ kind: "idle" });
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);

  const giveUp = (): void => {
    clearTimeout(timer.current);
    setSearch({ kind: "idle" });
  };

  const begin = ({ plane, panel }: ActivePlane): void => {
    clearTimeout(timer.current);
    const steps = searchBestStart(plane, panel);
    const slice = (): void => {
      const end = performance.now() + SLICE_MS;
      try {
        for (;;) {
          const step = steps.next();
          if (step.done) {
            setSearch({ kind: "found", best: step.value });
            return;
          }
          if (performance.now() > end) {
            setSearch({ kind: "searching", ...step.value });
            timer.current = setTimeout(slice);
            return;
          }
        }
      } catch (failure) {
        setSearch({ kind: "failed", sentence: errorMessage(failure) });
      }
    };
    setSearch({ kind: "searching", weighed: 0, choices: 1 });
    timer.current = setTimeout(slice);
  };

  useEffect(
    () => () => {
      clearTimeout(timer.current);
    },
    [],
  );
  return { search, begin, giveUp };
};
