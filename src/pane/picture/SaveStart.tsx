import { Button } from "@fluentui/react-button";
import { isBlank } from "../../../shared/cell";
import { describeCell } from "../../../shared/describe";
import { writeStart, type LayoutStart } from "../../../shared/layoutStart";
import type { Host } from "../../workbook/host";
import { a1 } from "../../workbook/address";
import { START_CELL, startPatch } from "../../sheets/fieldSheet/startPatch";
import { valueAt } from "../../workbook/contents";
import type { ActiveSheet } from "../../workbook/activeSheet";
import { isFieldSheet } from "../../sheets/activeSheet/activePlane";
import { OutcomeLine } from "../parts/OutcomeLine";
import { useOutcome } from "../parts/useOutcome";

interface Props {
  readonly host: Host;
  readonly view: ActiveSheet;
  /** The best start, if it differs from the sheet's own. */
  readonly start: LayoutStart | undefined;
}

/** A button that writes the best start into the field sheet's start cell and names the value that it replaces. */
export const SaveStart = ({ host, view, start }: Props) => {
  const { isBusy, outcome, attempt, undo } = useOutcome();
  const cell = a1(START_CELL);
  const holds = valueAt(view, START_CELL);
  const keep = (found: LayoutStart): Promise<void> =>
    attempt(async () => ({
      undoAction: {
        run: await host.putCells(startPatch(view, found)),
        said: `Undone: ${cell} is as it was.`,
      },
      message: `${cell} on "${view.sheet}" is now "${writeStart(found)}".`,
    }));
  return (
    <>
      {start &&
        (isFieldSheet(view) ? (
          <Button disabledFocusable={isBusy} onClick={() => void keep(start)}>
            {`Write this start into ${cell}${isBlank(holds) ? "" : `, replacing ${describeCell(holds)}`}`}
          </Button>
        ) : (
          <p class="hint">To keep it, type it as the start on the field sheet.</p>
        ))}
      <OutcomeLine outcome={outcome} onUndo={undo} />
    </>
  );
};
