import type { LaidPanel } from "../../../shared/kinds/panel";
import { wholeCount } from "../../../shared/rounding";
import type { Face } from "./face";
import { slabsBetween, type Crossing, type Slab } from "./slabs";
import { clip, farthestIn, nearestIn, type Flank, type Trapezoid } from "./trapezoid";
import { HAIR_IN, tidy } from "./precision";

/** A span along a course, in inches from the start side. */
export interface Span {
  readonly fromIn: number;
  readonly toIn: number;
}

/** The part of the face that one course covers, before joints cut it into pieces. */
export interface CourseStrip {
  /** 1 is the course at the eave. */
  readonly course: number;
  readonly lowIn: number;
  readonly highIn: number;
  /** What panels cover: the face without openings and without the setback at gables. */
  readonly covered: readonly Trapezoid[];
  /** Width of the roof where gable setbacks leave nothing to cover; 0 where something is covered. */
  readonly bareWidthIn: number;
  /** Where a full-height panel fits whole, with neither end bent. */
  readonly wholeSpans: readonly Span[];
}

const flankOf = ({ edge, atLowIn, atHighIn }: Crossing): Flank => ({ atLowIn, atHighIn, kind: edge.kind });

const widthOf = (roof: Trapezoid): number => farthestIn(roof) - nearestIn(roof);

/** The roof lies between the first and second side, the third and fourth, and so on (even-odd rule). */
const roofOf = ({ lowIn, highIn, crossings }: Slab): Trapezoid[] =>
  crossings.flatMap((crossing, index) => {
    const next = crossings[index + 1];
    if (index % 2 === 1 || !next) return [];
    const roof = { lowIn, highIn, near: flankOf(crossing), far: flankOf(next) };
    return widthOf(roof) > HAIR_IN ? [roof] : [];
  });

const setBack = (roof: Trapezoid, setbackIn: number): Trapezoid[] => {
  const fromIn = roof.near.kind === "gable" ? roof.near.atLowIn + setbackIn : nearestIn(roof);
  const toIn = roof.far.kind === "gable" ? roof.far.atLowIn - setbackIn : farthestIn(roof);
  return clip(roof, fromIn, toIn, "gable");
};

/** Where a trapezoid covers its full height. A panel that is bent at a gable isn't whole, so the span ends short of it. */
const fullHeightSpan = (roof: Trapezoid, { gableSetbackIn, gableFoldIn }: LaidPanel): Span => {
  const gableIn = gableSetbackIn + (gableFoldIn > 0 ? 2 * HAIR_IN : 0);
  const { near, far } = roof;
  return {
    fromIn: Math.max(near.atLowIn, near.atHighIn) + (near.kind === "gable" ? gableIn : 0),
    toIn: Math.min(far.atLowIn, far.atHighIn) - (far.kind === "gable" ? gableIn : 0),
  };
};

const inBoth = (some: readonly Span[], others: readonly Span[]): Span[] =>
  some
    .flatMap((a) =>
      others.map((b) => ({ fromIn: Math.max(a.fromIn, b.fromIn), toIn: Math.min(a.toIn, b.toIn) })),
    )
    .filter(({ fromIn, toIn }) => toIn > fromIn);

/** Divides the face into the strips of its courses. The top strip has the height that is left. */
export const courseStrips = (face: Face, panel: LaidPanel): CourseStrip[] => {
  const courseCount = wholeCount(face.heightIn / panel.exposedHeightIn);
  const lineIn = (course: number): number =>
    course === courseCount ? face.heightIn : tidy(course * panel.exposedHeightIn);
  return Array.from({ length: courseCount }, (_, index) => {
    const [lowIn, highIn] = [lineIn(index), lineIn(index + 1)];
    const roof = slabsBetween(face, lowIn, highIn).map(roofOf);
    const isFull = panel.exposedHeightIn - (highIn - lowIn) <= HAIR_IN;
    const spans = roof.map((slab) => slab.map((shape) => fullHeightSpan(shape, panel)));
    const covered = roof.flat().flatMap((shape) => setBack(shape, panel.gableSetbackIn));
    return {
      course: index + 1,
      lowIn,
      highIn,
      covered,
      bareWidthIn: covered.length > 0 ? 0 : Math.max(0, ...roof.flat().map(widthOf)),
      wholeSpans: isFull ? spans.reduce(inBoth) : [],
    };
  });
};
