import type { Roof } from "../../../functions/roof/roofParts";
import { failureInWords } from "../../workbook/failureInWords";
import type { Host } from "../../workbook/host";
import type { Figure } from "../../pictures/figure";
import { cellInView, type SheetInView } from "../../workbook/inView";
import { readNamed } from "../../sheets/inView/named";
import { isRoofSheet, roofFromNames } from "../../sheets/inView/roofInView";
import { useWatched } from "../parts/useWatched";
import { planeInView, type PlaneInView } from "../../sheets/inView/planeInView";

/** What the picture shows: a plane or a roof with the sheet that it stands on, or a sentence on why there is none. */
export type Sight =
  | { readonly kind: "plane"; readonly plane: PlaneInView; readonly view: SheetInView }
  | { readonly kind: "roof"; readonly roof: Roof; readonly view: SheetInView }
  | { readonly kind: "figure"; readonly figure: Figure; readonly title: string }
  | { readonly kind: "nothing"; readonly sentence: string };

/** Every page of a practice workbook says on its second row which class it is of. */
const CLASS_LINE = { row: 1, column: 0 };
const isPractice = (view: SheetInView): boolean =>
  String(cellInView(view, CLASS_LINE) ?? "").startsWith("Seed ");

/** What makes practice problems is loaded when the first page of one is in front. */
const practiceFigure = async (view: SheetInView): Promise<Sight> => {
  const { pageInView } = await import("../../practice/marking/pageInView");
  const question = pageInView(view)?.problem.question;
  return question?.figure
    ? { kind: "figure", figure: question.figure, title: question.title }
    : { kind: "nothing", sentence: "This page of a practice workbook has no picture." };
};

const look = async (host: Host): Promise<Sight> => {
  try {
    const [view, named] = await Promise.all([host.inView(), readNamed(host)]);
    if (isPractice(view)) return await practiceFigure(view);
    if (isRoofSheet(view)) return { kind: "roof", roof: roofFromNames(named), view };
    return { kind: "plane", plane: planeInView(view, named), view };
  } catch (failure) {
    return { kind: "nothing", sentence: failureInWords(failure) };
  }
};

/** What a person looks at, read again whenever the selection or a cell changes. */
export const useSight = (host: Host, isShown: boolean): Sight | undefined => useWatched(host, isShown, look);
