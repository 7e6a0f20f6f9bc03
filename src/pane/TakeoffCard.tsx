import { useState } from "preact/hooks";
import type { Added, Host } from "../workbook/host";
import { addTakeOff } from "../sheets/newJob/addTakeoff";
import { DEMO_TAKE_OFF, FOOTPRINT_DEMO } from "../sheets/newJob/demo";
import { BLANK_ROOF_TAKE_OFF, BLANK_TAKE_OFF, type TakeOffOptions } from "../sheets/takeoff/takeoffOptions";
import { BuildCard } from "./parts/BuildCard";
import { ChoiceField } from "./controls/ChoiceField";
import { TextField } from "./controls/TextField";

const STARTS: Readonly<Record<string, { readonly label: string; readonly options: TakeOffOptions }>> = {
  planes: { label: "Planes measured by hand", options: BLANK_TAKE_OFF },
  footprint: { label: "A footprint and a pitch", options: BLANK_ROOF_TAKE_OFF },
  planesExample: { label: "An example: planes", options: DEMO_TAKE_OFF },
  footprintExample: { label: "An example: footprint", options: FOOTPRINT_DEMO },
};

/** Builds the take-off on new sheets of the workbook. */
export const TakeOffCard = ({ host }: { host: Host }) => {
  const [job, setJob] = useState("");
  const [start, setStart] = useState("planes");

  const build = (): Promise<Added> => {
    const options = STARTS[start]?.options ?? BLANK_TAKE_OFF;
    return addTakeOff(host, job.trim() === "" ? options : { ...options, job: job.trim() });
  };

  return (
    <BuildCard
      id="take-off"
      title="Roof take-off"
      summary="From measured planes, or a footprint, to a priced order: area, courses, starters, underlayment, trim cut from stock, fasteners, packs. It comes on new sheets; what is in the workbook stays as it is."
      action="Build take-off"
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
