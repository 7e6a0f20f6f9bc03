import { Button } from "@fluentui/react-button";
import { useState } from "preact/hooks";
import type { Host } from "../../workbook/host";
import { readBlock, type Block } from "../../sheets/extend/block";
import { sameSheet, type Survey } from "../../workbook/survey";
import { patchArea, patchInWords, type CellPatch } from "../../workbook/patch";
import { areaAddress } from "../../workbook/address";
import { ChoiceField, type Choice } from "../controls/ChoiceField";
import { SingleResult } from "./SingleResult";
import { ColumnsBeside, type Meanings } from "./ColumnsBeside";
import type { Typed } from "./TypedFields";
import { OutcomeLine } from "../parts/OutcomeLine";
import { Progress } from "../parts/Progress";
import { useProgress } from "../parts/useProgress";
import { useWorkbookState } from "../parts/useWorkbookState";
import { useOutcome } from "../parts/useOutcome";

type Shape = "beside" | "cell" | "block";
const SHAPES: readonly Choice<Shape>[] = [
  { value: "beside", label: "Columns next to a block" },
  { value: "cell", label: "One cell, at the selection" },
  { value: "block", label: "A small block, at the selection" },
];

/** What was read, and what to add to it. */
type Reading =
  | { readonly shape: "beside"; readonly survey: Survey; readonly block: Block }
  | { readonly shape: "cell" | "block"; readonly survey: Survey };

/** Adds results to an existing sheet. It proposes, the user confirms, and then all of it is written or nothing. */
export const ExtendCard = ({ host }: { host: Host }) => {
  const [shape, setShape] = useState<Shape>("beside");
  const [reading, setReading] = useWorkbookState<Reading>();
  const [readings, setReadings] = useState(0);
  // Both are kept after a write, for the next results or for the same ones after Undo.
  const [typed, setTyped] = useState<Typed>({});
  const [meanings, setMeanings] = useState<Meanings>({});
  const { outcome, attempt, undo } = useOutcome();
  const { working, withProgress } = useProgress();

  const read = (): Promise<void> =>
    attempt(async () => {
      setReading(undefined);
      const survey = await host.survey();
      setReading(shape === "beside" ? { shape, survey, block: readBlock(survey) } : { shape, survey });
      setReadings((before) => before + 1);
      return { message: "" };
    });

  const write = (plan: () => CellPatch): Promise<void> =>
    attempt(async () => {
      const patch = plan();
      if (reading && !sameSheet(reading.survey, await host.survey()))
        throw new Error("The sheet has changed, or another sheet is active: read the selection again.");
      const undoAction = await withProgress("Cells written", "Canceled: nothing was written.", (run) =>
        host.putCells(patch, run),
      );
      setReading(undefined);
      return {
        message: `Wrote ${patchInWords(patch)}.`,
        undoAction: {
          run: () => withProgress("Cells undone", "Canceled: what was written stays.", undoAction),
          said: `Undone: ${areaAddress(patchArea(patch))} on "${patch.sheet}" is as it was.`,
        },
      };
    });

  return (
    <section class="card" aria-labelledby="extend-title">
      <h2 id="extend-title">Extend a sheet</h2>
      <p>
        Adds results to the active sheet. Select a table, or a block with a heading row. Only blank cells are
        filled; nothing is overwritten.
      </p>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void read();
        }}
      >
        <ChoiceField
          label="Add"
          name="extend-shape"
          value={shape}
          choices={SHAPES}
          onValue={(chosen) => {
            setShape(chosen);
            setReading(undefined);
          }}
        />
        <Button appearance="primary" type="submit">
          Read the selection
        </Button>
      </form>
      {reading?.shape === "beside" && (
        <ColumnsBeside
          key={readings}
          survey={reading.survey}
          block={reading.block}
          typed={typed}
          onType={setTyped}
          meanings={meanings}
          onMean={setMeanings}
          onWrite={(plan) => void write(plan)}
        />
      )}
      {reading && reading.shape !== "beside" && (
        <SingleResult
          key={readings}
          survey={reading.survey}
          shape={reading.shape}
          typed={typed}
          onType={setTyped}
          onWrite={(plan) => void write(plan)}
        />
      )}
      {working && <Progress {...working} />}
      <OutcomeLine outcome={outcome} onUndo={undo} />
    </section>
  );
};
