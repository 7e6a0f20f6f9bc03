import type { Side } from "../../../shared/layoutStart";
import type { LaidPanel } from "../../../shared/kinds/panel";
import { panelSpan, type LaidCourse, type PlacedCut } from "./course";
import { warningText, courseWarnings, pieceWarnings } from "./warnings";
import type { ListedCourse, ListedCut, ListedEnd } from "./layoutResult";
import { lengthOf, type KeptLocks } from "./piece";
import { ringsOf } from "./ring";
import type { PanelSource } from "./panelSources";
import { leftEndIn, seenRing, type View } from "./view";
import { tidy } from "./precision";

const keptLock = (keeps: KeptLocks, side: Side): ListedCut["keepsLock"] => {
  if (keeps === "both") return "both";
  if (keeps === "neither") return "none";
  const nearIsLeft = side === "left";
  return (keeps === "near") === nearIsLeft ? "left" : "right";
};

const wholeBefore = ({ wholeRuns }: LaidCourse, place: number): number =>
  wholeRuns.reduce((sum, run) => sum + (run.firstPlace < place ? run.count : 0), 0);

const listCut = ({ piece }: PlacedCut, number: number, source: PanelSource, view: View): ListedCut => ({
  piece: number,
  positionIn: tidy(piece.cover.fromIn),
  coverIn: lengthOf(piece.cover),
  blankIn: lengthOf(piece.blank),
  keepsLock: keptLock(piece.keeps, view.side),
  ...source,
  rings: ringsOf(piece.shapes).map((ring) => seenRing(view, ring)),
  warnings: pieceWarnings(piece, view.panel, view.side).map(
    (warning) => `piece ${number} ${warningText(warning)}`,
  ),
});

/** The outermost piece of a course, at its first or last place. */
const listEnd = (
  outerCut: PlacedCut | undefined,
  outerWhole: number | undefined,
  isOuter: (cutPlace: number, wholePlace: number) => boolean,
  panel: LaidPanel,
): ListedEnd | undefined => {
  if (outerCut && (outerWhole === undefined || isOuter(outerCut.place, outerWhole)))
    return { coverIn: lengthOf(outerCut.piece.cover), blankIn: lengthOf(outerCut.piece.blank) };
  if (outerWhole === undefined) return undefined;
  return { coverIn: panel.exposedWidthIn, blankIn: panel.exposedWidthIn };
};

/** A course as plain data for tables and drawings. */
export const listCourse = (laid: LaidCourse, sources: readonly PanelSource[], view: View): ListedCourse => {
  const { strip, cuts, wholeRuns, firstJointIn } = laid;
  const widthIn = view.panel.exposedWidthIn;
  const listed = cuts.map((cut, index) =>
    listCut(cut, wholeBefore(laid, cut.place) + index + 1, sources[index] as PanelSource, view),
  );
  const lastRun = wholeRuns.at(-1);
  const starter = listEnd(cuts[0], wholeRuns[0]?.firstPlace, (cut, whole) => cut < whole, view.panel);
  const closing = listEnd(
    cuts.at(-1),
    lastRun && lastRun.firstPlace + lastRun.count - 1,
    (cut, whole) => cut > whole,
    view.panel,
  );
  return {
    course: strip.course,
    lineIn: strip.lowIn,
    showsIn: tidy(strip.highIn - strip.lowIn),
    whole: wholeRuns.reduce((sum, { count }) => sum + count, 0),
    wholeRuns: wholeRuns.map(({ firstPlace, count }) => ({
      xIn: leftEndIn(
        view,
        panelSpan(firstPlace, firstJointIn, widthIn).fromIn,
        panelSpan(firstPlace + count - 1, firstJointIn, widthIn).toIn,
      ),
      count,
    })),
    cuts: listed,
    ...(starter && { starter }),
    ...(closing && { closing }),
    warnings: [
      ...courseWarnings(strip, view.panel).map((warning) => `the course ${warningText(warning)}`),
      ...listed.flatMap(({ warnings }) => warnings),
    ],
  };
};
