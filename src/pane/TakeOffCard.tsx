import { useState } from "preact/hooks";
import type { Host } from "../hosts/host";
import { addTakeOff } from "../sheets/takeOff/addTakeOff";
import { DEMO_TAKE_OFF } from "../sheets/takeOff/demo";
import { BLANK_TAKE_OFF, type TakeOffOptions } from "../sheets/takeOff/options";

type Outcome = { readonly kind: "written" | "failed"; readonly message: string };
type Progress = "idle" | "writing";

const STARTS: Readonly<Record<string, { readonly label: string; readonly options: TakeOffOptions }>> = {
  empty: { label: "An empty take-off", options: BLANK_TAKE_OFF },
  example: { label: "The worked example", options: DEMO_TAKE_OFF },
};

const listed = (sheets: readonly string[]): string => sheets.map((name) => `"${name}"`).join(" and ");

/** Builds the take-off on new sheets of the workbook. */
export const TakeOffCard = ({ host }: { host: Host }) => {
  const [job, setJob] = useState("");
  const [start, setStart] = useState("empty");
  const [progress, setProgress] = useState<Progress>("idle");
  const [outcome, setOutcome] = useState<Outcome>();

  const build = async (event: Event): Promise<void> => {
    event.preventDefault();
    const options = STARTS[start]?.options ?? BLANK_TAKE_OFF;
    setProgress("writing");
    setOutcome(undefined);
    try {
      const sheets = await addTakeOff(host, job.trim() === "" ? options : { ...options, job: job.trim() });
      setOutcome({ kind: "written", message: `Added ${listed(sheets)}. No other sheet was changed.` });
    } catch (failure) {
      setOutcome({ kind: "failed", message: failure instanceof Error ? failure.message : String(failure) });
    } finally {
      setProgress("idle");
    }
  };

  return (
    <section class="card" aria-labelledby="take-off-title">
      <h2 id="take-off-title">Roof take-off</h2>
      <p>
        From measured planes to area, courses, starters, trim, fasteners and packs, on a new sheet with a
        panel sheet beside it. What is in the workbook stays as it is.
      </p>
      <form onSubmit={(event) => void build(event)}>
        <label>
          Job name
          <input
            name="job"
            value={job}
            autocomplete="off"
            onInput={(event) => {
              setJob(event.currentTarget.value);
            }}
          />
        </label>
        <label>
          Start with
          <select
            name="start"
            value={start}
            onChange={(event) => {
              setStart(event.currentTarget.value);
            }}
          >
            {Object.entries(STARTS).map(([key, { label }]) => (
              <option key={key} value={key}>
                {label}
              </option>
            ))}
          </select>
        </label>
        <button type="submit" disabled={progress === "writing"}>
          {progress === "writing" ? "Building…" : "Build take-off"}
        </button>
      </form>
      <p role="status" class={outcome ? `outcome ${outcome.kind}` : "outcome"}>
        {outcome?.message}
      </p>
    </section>
  );
};
