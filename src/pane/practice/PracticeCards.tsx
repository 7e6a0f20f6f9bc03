import { useState } from "preact/hooks";
import type { Host } from "../../workbook/host";
import type { HandOut } from "../parts/paneHost";
import { ClassCard } from "./ClassCard";
import { firstForm } from "./classForm";
import { MarkingCard } from "./MarkingCard";

/** Builds a class's sheets and marks them. Pasted answers belong to the class in the first card. */
export const PracticeCards = ({ host, handOut }: { host: Host; handOut: HandOut }) => {
  const [form, setForm] = useState(firstForm);
  return (
    <>
      <ClassCard handOut={handOut} form={form} onForm={setForm} />
      <MarkingCard host={host} form={form} />
    </>
  );
};
