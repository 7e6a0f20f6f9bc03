import type { Host } from "../../workbook/host";
import type { Survey } from "../../workbook/survey";
import { useLiveQuery } from "../parts/useLiveQuery";

/** Undefined for a sheet that can't be read, such as a chart sheet. */
const survey = (host: Host): Promise<Survey | undefined> => host.survey().catch(() => undefined);

/** The active sheet, read again when the selection, a cell or a result changes. */
export const useSurvey = (host: Host, isShown: boolean): Survey | undefined =>
  useLiveQuery(host, isShown, survey);
