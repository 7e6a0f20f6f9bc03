import { useEffect, useRef, useState } from "preact/hooks";
import { searchBestStart, type BestStart } from "../../../functions/layout/engine/findBestStart";
import { errorMessage } from "../../workbook/errorMessage";
import type { ActivePlane } from "../../sheets/activeSheet/activePlane";

export type Search =
  | { readonly kind: "idle" }
  | { readonly kind: "searching"; readonly weighed: number; readonly choices: number }
  | { readonly kind: "found"; readonly best: BestStart }
  | { readonly kind: "failed"; readonly sentence: string };

/** Long enough to make progress, short enough to keep the page responsive. */
const SLICE_MS = 12;

/** Searches for a plane's best start in short slices, so the page stays responsive and the search can be canceled. */
export const useBestStart = (): {
  search: Search;
  startSearch: (plane: ActivePlane) => void;
  cancelSearch: () => void;
} => {
  const [search, setSearch] = useState<Search>({ kind: "idle" });
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);

  const cancelSearch = (): void => {
    clearTimeout(timer.current);
    setSearch({ kind: "idle" });
  };

  const startSearch = ({ plane, panel }: ActivePlane): void => {
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
  return { search, startSearch, cancelSearch };
};
