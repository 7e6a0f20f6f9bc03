import { Button } from "@fluentui/react-button";
import { useEffect, useRef } from "preact/hooks";
import { writeStart, type LayoutStart } from "../../../shared/layoutStart";
import { counted } from "../../../shared/describe";
import type { ActivePlane } from "../../sheets/activeSheet/activePlane";
import { useBestStart } from "./useBestStart";
import { Progress } from "../parts/Progress";

interface Props {
  readonly plane: ActivePlane;
  /** Called with the best start, so that the plane is drawn with it. */
  readonly onFound: (start: LayoutStart) => void;
}

/** Finds the start that leaves no slivers and the least waste, with progress and a Cancel button. */
export const BestStartFinder = ({ plane, onFound }: Props) => {
  const { search, startSearch, cancelSearch } = useBestStart();
  useEffect(() => {
    if (search.kind === "found") onFound(search.best.start);
  }, [search]);
  const isSearching = search.kind === "searching";
  const button = useRef<HTMLButtonElement>(null);
  return (
    <div class="search">
      <Button
        ref={button}
        disabledFocusable={isSearching}
        onClick={() => {
          startSearch(plane);
        }}
      >
        Find the best start
      </Button>
      {isSearching && (
        <Progress
          label="Comparing starts"
          share={search.weighed / search.choices}
          onCancel={() => {
            // The Cancel button disappears with the bar.
            button.current?.focus();
            cancelSearch();
          }}
        />
      )}
      <p role="status">
        {search.kind === "failed" && search.sentence}
        {search.kind === "found" &&
          `Start "${writeStart(search.best.start)}": ${counted(search.best.warnings, "warning")}, ` +
            `${counted(search.best.panels, "panel")}, ${counted(search.best.cuts, "cut")}; ` +
            `${counted(search.best.choices, "start")} compared.`}
      </p>
    </div>
  );
};
