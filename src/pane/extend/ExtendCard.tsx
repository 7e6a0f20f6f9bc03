import { Button } from "@fluentui/react-button";
import { useEffect, useRef, useState } from "preact/hooks";
import type { Host } from "../../hosts/host";
import { readBlock, type Block } from "../../sheets/extend/block";
import { sameSheet, type Survey } from "../../sheets/extend/survey";
import { patchArea, patchInWords, type CellPatch, type Undo } from "../../sheets/patch";
import { areaInWords } from "../../sheets/address";
import { failureInWords } from "../../failureInWords";
import { ChoiceField, type Choice } from "../controls/ChoiceField";
import { Alone } from "./Alone";
import { Beside } from "./Beside";
import { Progress } from "../Progress";
import { useLongRun } from "../useLongRun";

type Shape = "beside" | "cell" | "block";
const SHAPES: readonly Choice<Shape>[] = [
  { value: "beside", label: "Columns beside a block" },
  { value: "cell", label: "One cell where I stand" },
  { value: "block", label: "A small block where I stand" },
];

/** What was read, and what is to be made of it. */
type Reading =
  | { readonly shape: "beside"; readonly survey: Survey; readonly block: Block }
  | { readonly shape: "cell" | "block"; readonly survey: Survey };

interface Outcome {
  readonly kind: "written" | "failed";
  readonly message: string;
  readonly undo?: Undo;
  /** What `undo` would take back. */
  readonly where?: string;
}

/** Adds results to a sheet that the workbook has: it proposes, a person confirms, and then it is written, all or nothing. */
export const ExtendCard = ({ host }: { host: Host }) => {
  const [shape, setShape] = useState<Shape>("beside");
  const [reading, setReading] = useState<Reading>();
  const [readings, setReadings] = useState(0);
  const [outcome, setOutcome] = useState<Outcome>();
  const [isBusy, setIsBusy] = useState(false);
  const { working, watched } = useLongRun();
  const undoButton = useRef<HTMLButtonElement>(null);
  const readButton = useRef<HTMLButtonElement>(null);

  /** One thing at a time. A button that has the keyboard isn't disabled meanwhile: it would lose it. */
  const attempt = async (act: () => Promise<void>, stillUndo: Partial<Outcome> = {}): Promise<void> => {
    if (isBusy) return;
    setIsBusy(true);
    try {
      await act();
    } catch (failure) {
      setOutcome({ ...stillUndo, kind: "failed", message: failureInWords(failure) });
    } finally {
      setIsBusy(false);
    }
  };

  const read = (): Promise<void> =>
    attempt(async () => {
      setOutcome(undefined);
      setReading(undefined);
      const survey = await host.survey();
      setReading(shape === "beside" ? { shape, survey, block: readBlock(survey) } : { shape, survey });
      setReadings((before) => before + 1);
    });

  const write = (plan: () => CellPatch): Promise<void> =>
    attempt(async () => {
      const patch = plan();
      if (reading && !sameSheet(reading.survey, await host.survey()))
        throw new Error(
          "The sheet has changed since it was read, or another is in front: read the selection again.",
        );
      const undo = await watched("Cells written", "Cancelled: nothing was written.", (run) =>
        host.put(patch, run),
      );
      const where = `${areaInWords(patchArea(patch))} on "${patch.sheet}"`;
      setOutcome({ kind: "written", message: `Wrote ${patchInWords(patch)}.`, undo, where });
      setReading(undefined);
    });

  const takeBack = ({ undo, where }: Outcome): Promise<void> =>
    attempt(async () => {
      await watched("Cells taken back", "Cancelled: what was written stays.", async (run) => undo?.(run));
      setOutcome({ kind: "written", message: `Undone: ${where ?? ""} is as it was.` });
      readButton.current?.focus();
    }, outcome);

  // The button that was pressed is gone: the keyboard goes on at the one that takes it back.
  useEffect(() => {
    if (outcome?.undo) undoButton.current?.focus();
  }, [outcome]);

  return (
    <section class="card" aria-labelledby="extend-title">
      <h2 id="extend-title">Extend a sheet</h2>
      <p>
        Adds results to the sheet in front: select a table, or a block with a heading row. Blank cells only
        are written; nothing that stands there is touched.
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
        <Button appearance="primary" type="submit" ref={readButton}>
          Read the selection
        </Button>
      </form>
      {reading?.shape === "beside" && (
        <Beside
          key={readings}
          survey={reading.survey}
          block={reading.block}
          onWrite={(plan) => void write(plan)}
        />
      )}
      {reading && reading.shape !== "beside" && (
        <Alone
          key={readings}
          survey={reading.survey}
          shape={reading.shape}
          onWrite={(plan) => void write(plan)}
        />
      )}
      {working && <Progress words={working.words} share={working.share} onCancel={working.cancel} />}
      <p role="status" class={`outcome ${outcome?.kind ?? ""}`}>
        {outcome?.message}
      </p>
      {outcome?.undo && (
        <Button ref={undoButton} onClick={() => void takeBack(outcome)}>
          Undo
        </Button>
      )}
    </section>
  );
};
