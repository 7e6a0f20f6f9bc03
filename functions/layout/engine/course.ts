import type { LaidPanel } from "../../../shared/kinds/panel";
import { connectedParts, joinStacked } from "./connectedParts";
import { cutPiece, type CutPiece } from "./piece";
import type { Span, CourseStrip } from "./courseStrips";
import { clip, farthestIn, nearestIn } from "./trapezoid";
import { HAIR_IN } from "./precision";

/** Whole panels side by side. Panel places are numbered from 0 at the start side. */
interface WholeRun {
  readonly firstPlace: number;
  readonly count: number;
}

/** A cut piece and its panel place. Several pieces may share a place around an opening. */
export interface PlacedCut {
  readonly place: number;
  readonly piece: CutPiece;
}

/** A course with its joints: whole panels and cut pieces, both from near to far. */
export interface LaidCourse {
  readonly strip: CourseStrip;
  readonly firstJointIn: number;
  readonly wholeRuns: readonly WholeRun[];
  readonly cuts: readonly PlacedCut[];
}

/** The span that a whole panel would cover at a place. */
export const panelSpan = (place: number, firstJointIn: number, widthIn: number): Span => ({
  fromIn: firstJointIn + (place - 1) * widthIn,
  toIn: firstJointIn + place * widthIn,
});

/** The places that a span reaches into: the first, and the first past it. */
const placesIn = ({ fromIn, toIn }: Span, firstJointIn: number, widthIn: number): [number, number] => [
  Math.floor((fromIn + HAIR_IN - firstJointIn) / widthIn) + 1,
  Math.ceil((toIn - HAIR_IN - firstJointIn) / widthIn) + 1,
];

const wholeRun = (span: Span, firstJointIn: number, widthIn: number): WholeRun => {
  const firstPlace = Math.ceil((span.fromIn - HAIR_IN - firstJointIn) / widthIn) + 1;
  const endPlace = Math.floor((span.toIn + HAIR_IN - firstJointIn) / widthIn) + 1;
  return { firstPlace, count: Math.max(0, endPlace - firstPlace) };
};

/** Every place that the roof reaches into and that no whole panel fills. */
const placesToCut = (
  { covered }: CourseStrip,
  runs: readonly WholeRun[],
  firstJointIn: number,
  widthIn: number,
): number[] => {
  const places = new Set<number>();
  for (const shape of covered) {
    const [first, end] = placesIn(
      { fromIn: nearestIn(shape), toIn: farthestIn(shape) },
      firstJointIn,
      widthIn,
    );
    for (let place = first; place < end; place++) {
      const run = runs.find(({ firstPlace, count }) => place >= firstPlace && place < firstPlace + count);
      if (run) place = run.firstPlace + run.count - 1;
      else places.add(place);
    }
  }
  return [...places].sort((a, b) => a - b);
};

const cutsAt = (place: number, { covered }: CourseStrip, span: Span, panel: LaidPanel): PlacedCut[] =>
  connectedParts(joinStacked(covered.flatMap((shape) => clip(shape, span.fromIn, span.toIn, "joint"))))
    .map((shapes) => ({ place, piece: cutPiece(shapes, span, panel) }))
    .sort((a, b) => a.piece.cover.fromIn - b.piece.cover.fromIn);

/** Lays one course: every panel that fits whole, and one piece for each connected part of the roof within a panel place. */
export const layCourse = (strip: CourseStrip, firstJointIn: number, panel: LaidPanel): LaidCourse => {
  const widthIn = panel.exposedWidthIn;
  const wholeRuns = strip.wholeSpans
    .map((span) => wholeRun(span, firstJointIn, widthIn))
    .filter(({ count }) => count > 0);
  const cuts = placesToCut(strip, wholeRuns, firstJointIn, widthIn).flatMap((place) =>
    cutsAt(place, strip, panelSpan(place, firstJointIn, widthIn), panel),
  );
  return { strip, firstJointIn, wholeRuns, cuts };
};
