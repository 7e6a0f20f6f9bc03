import type { Host } from "../../workbook/host";
import type { Survey } from "../../workbook/survey";
import { useWatched } from "../parts/useWatched";

/** A sheet that can't be read just now, such as a chart's, is none. */
const survey = (host: Host): Promise<Survey | undefined> => host.survey().catch(() => undefined);

/** The sheet in front, as it is now; read again when a selection, a cell or a result changes. */
export const useSurvey = (host: Host, isShown: boolean): Survey | undefined =>
  useWatched(host, isShown, survey);
