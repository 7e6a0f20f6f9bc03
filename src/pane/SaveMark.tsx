import { useEffect, useState } from "preact/hooks";
import type { KeepStatus, KeptWorkbooks } from "./parts/paneHost";

const time = new Intl.DateTimeFormat("en-US", { timeStyle: "short" });

const inWords = ({ isInFile, fileName, keptAt }: KeepStatus): string => {
  if (isInFile) return fileName === undefined ? "No changes to save." : `All changes are in ${fileName}.`;
  const kept = keptAt === undefined ? "" : ` Kept on this computer at ${time.format(keptAt)}.`;
  return `Not saved to a file.${kept}`;
};

/** Whether the workbook is saved, always visible. Only a failure interrupts a screen reader. */
export const SaveMark = ({ watch }: { watch: KeptWorkbooks["watch"] }) => {
  const [status, setStatus] = useState<KeepStatus>();
  useEffect(() => watch(setStatus), [watch]);
  return (
    <div class="save-mark">
      <p class={status && !status.isInFile ? "unsaved" : ""}>{status ? inWords(status) : "Opening…"}</p>
      {status?.failure && (
        <p role="alert" class="outcome caution">
          {status.failure}
        </p>
      )}
    </div>
  );
};
