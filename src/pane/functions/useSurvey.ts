import { useEffect, useState } from "preact/hooks";
import type { Host } from "../../hosts/host";
import type { Survey } from "../../sheets/extend/survey";

/** The sheet in front, as it is now; read again when a selection, a cell or a result changes. */
export const useSurvey = (host: Host): Survey | undefined => {
  const [survey, setSurvey] = useState<Survey>();
  useEffect(() => {
    let isOver = false;
    const read = async (): Promise<void> => {
      const read = await host.survey().catch(() => undefined);
      if (!isOver) setSurvey(read);
    };
    void read();
    const stop = host.watch(() => void read());
    return () => {
      isOver = true;
      stop();
    };
  }, [host]);
  return survey;
};
