import { useState } from "preact/hooks";
import type { Added, Host } from "../workbook/host";
import { addTakeoff } from "../sheets/newJob/addTakeoff";
import { DEMO_TAKEOFF, FOOTPRINT_DEMO } from "../sheets/newJob/demoTakeoffs";
import { BLANK_ROOF_TAKEOFF, BLANK_TAKEOFF, type TakeoffOptions } from "../sheets/takeoff/takeoffOptions";
import { BuildCard } from "./parts/BuildCard";
import { ChoiceField } from "./controls/ChoiceField";
import { TextField } from "./controls/TextField";

const STARTS: Readonly<Record<string, { readonly label: string; readonly options: TakeoffOptions }>> = {
  planes: { label: "Planes measured by hand", options: BLANK_TAKEOFF },
  footprint: { label: "A footprint and a pitch", options: BLANK_ROOF_TAKEOFF },
  planesExample: { label: "Example: planes", options: DEMO_TAKEOFF },
  footprintExample: { label: "Example: footprint", options: FOOTPRINT_DEMO },
};

/** Builds a takeoff on new sheets of the workbook. */
export const TakeoffCard = ({ host }: { host: Host }) => {
  const [job, setJob] = useState("");
  const [start, setStart] = useState("planes");

  const build = (): Promise<Added> => {
    const options = STARTS[start]?.options ?? BLANK_TAKEOFF;
    return addTakeoff(host, job.trim() === "" ? options : { ...options, job: job.trim() });
  };

  return (
    <BuildCard
      id="takeoff"
      title="Roof takeoff"
      summary="From measured planes or a footprint to a priced order: area, courses, starters, underlayment, trim cut from stock, fasteners and packs. Adds new sheets; existing sheets don't change."
      action="Build takeoff"
      build={build}
    >
      <TextField label="Job name" name="job" value={job} onValue={setJob} />
      <ChoiceField
        label="Start with"
        name="start"
        value={start}
        choices={Object.entries(STARTS).map(([value, { label }]) => ({ value, label }))}
        onValue={setStart}
      />
    </BuildCard>
  );
};
