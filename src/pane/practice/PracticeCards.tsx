import { useState } from "preact/hooks";
import type { Host } from "../../workbook/host";
import type { HandOut } from "../parts/paneHost";
import { ClassCard } from "./ClassCard";
import { firstForm } from "./classForm";
import { MarkingCard } from "./MarkingCard";

/** A class's sheets, and their marking: what is pasted there is of the class that is made here. */
export const PracticeCards = ({ host, handOut }: { host: Host; handOut: HandOut }) => {
  const [form, setForm] = useState(firstForm);
  return (
    <>
      <ClassCard handOut={handOut} form={form} onForm={setForm} />
      <MarkingCard host={host} form={form} />
    </>
  );
};
