import type { Roof } from "../../../functions/roof/roofParts";
import { errorMessage } from "../../workbook/errorMessage";
import type { Host } from "../../workbook/host";
import type { Figure } from "../../pictures/figure";
import { valueAt } from "../../workbook/contents";
import type { ActiveSheet } from "../../workbook/activeSheet";
import { readNamedRanges } from "../../sheets/activeSheet/namedRanges";
import { isRoofSheet, roofFromNames } from "../../sheets/activeSheet/activeRoof";
import { useLiveQuery } from "../parts/useLiveQuery";
import { activePlane, type ActivePlane } from "../../sheets/activeSheet/activePlane";

/** What to draw for the active sheet, or a message that says why there is no picture. */
export type ActivePicture =
  | { readonly kind: "plane"; readonly plane: ActivePlane; readonly view: ActiveSheet }
  | { readonly kind: "roof"; readonly roof: Roof; readonly view: ActiveSheet }
  | { readonly kind: "figure"; readonly figure: Figure; readonly title: string }
  | { readonly kind: "nothing"; readonly sentence: string };

/** Every page of a practice workbook names its class in the second row. */
const CLASS_LINE = { row: 1, column: 0 };
const isPractice = (view: ActiveSheet): boolean =>
  String(valueAt(view, CLASS_LINE) ?? "").startsWith("Seed ");

/** The practice code loads when a practice page is first active. */
const practiceFigure = async (view: ActiveSheet): Promise<ActivePicture> => {
  const { activeProblem } = await import("../../practice/marking/activeProblem");
  const question = activeProblem(view)?.question;
  return question?.figure
    ? { kind: "figure", figure: question.figure, title: question.title }
    : { kind: "nothing", sentence: "This page of a practice workbook has no picture." };
};

const readActivePicture = async (host: Host): Promise<ActivePicture> => {
  try {
    const [view, named] = await Promise.all([host.activeSheet(), readNamedRanges(host)]);
    if (isPractice(view)) return await practiceFigure(view);
    if (isRoofSheet(view)) return { kind: "roof", roof: roofFromNames(named), view };
    return { kind: "plane", plane: activePlane(view, named), view };
  } catch (failure) {
    return { kind: "nothing", sentence: errorMessage(failure) };
  }
};

/** The picture for the active sheet, read again when the selection or a cell changes. */
export const useActivePicture = (host: Host, isShown: boolean): ActivePicture | undefined =>
  useLiveQuery(host, isShown, readActivePicture);
