import type { Roof } from "../../../functions/roof/roofParts";
import { errorMessage } from "../../workbook/errorMessage";
import type { Host } from "../../workbook/host";
import type { Figure } from "../../pictures/figure";
import { valueAt } from "../../workbook/contents";
import type { ActiveSheet } from "../../workbook/activeSheet";
import { readNamedRanges } from "../../sheets/activeSheet/namedRanges";
import { isRoofSheet, roofFromNames } from "../../sheets/activeSheet/activeRoof";
import { useWatched } from "../parts/useWatched";
import { activePlane, type ActivePlane } from "../../sheets/activeSheet/activePlane";

/** What the picture shows: a plane or a roof with the sheet that it stands on, or a sentence on why there is none. */
export type Sight =
  | { readonly kind: "plane"; readonly plane: ActivePlane; readonly view: ActiveSheet }
  | { readonly kind: "roof"; readonly roof: Roof; readonly view: ActiveSheet }
  | { readonly kind: "figure"; readonly figure: Figure; readonly title: string }
  | { readonly kind: "nothing"; readonly sentence: string };

/** Every page of a practice workbook says on its second row which class it is of. */
const CLASS_LINE = { row: 1, column: 0 };
const isPractice = (view: ActiveSheet): boolean =>
  String(valueAt(view, CLASS_LINE) ?? "").startsWith("Seed ");

/** What makes practice problems is loaded when the first page of one is in front. */
const practiceFigure = async (view: ActiveSheet): Promise<Sight> => {
  const { activeProblem } = await import("../../practice/marking/activeProblem");
  const question = activeProblem(view)?.question;
  return question?.figure
    ? { kind: "figure", figure: question.figure, title: question.title }
    : { kind: "nothing", sentence: "This page of a practice workbook has no picture." };
};

const look = async (host: Host): Promise<Sight> => {
  try {
    const [view, named] = await Promise.all([host.activeSheet(), readNamedRanges(host)]);
    if (isPractice(view)) return await practiceFigure(view);
    if (isRoofSheet(view)) return { kind: "roof", roof: roofFromNames(named), view };
    return { kind: "plane", plane: activePlane(view, named), view };
  } catch (failure) {
    return { kind: "nothing", sentence: errorMessage(failure) };
  }
};

/** What a person looks at, read again whenever the selection or a cell changes. */
export const useSight = (host: Host, isShown: boolean): Sight | undefined => useWatched(host, isShown, look);
