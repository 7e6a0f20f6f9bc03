import { feetToInches } from "../../../shared/units";
import type { Outline, Point } from "../../../shared/outline";
import type { Side } from "../../../shared/layoutStart";
import type { EndKind } from "./trapezoid";
import { HAIR_IN, tidy } from "./precision";

/** A roof plane: its outline, and what no panel covers. Feet on the sloped face. */
export interface Plane {
  readonly outline: Outline;
  readonly openings: readonly Outline[];
}

/** A place on the face as the courses are laid: inches from the start side's outermost point, inches up from the lowest. */
export interface CoursePoint {
  readonly alongIn: number;
  readonly upIn: number;
}

/** A side of an outline that isn't level, from its lower to its upper end. */
export interface Edge {
  readonly low: CoursePoint;
  readonly high: CoursePoint;
  readonly kind: EndKind;
  /** 0 is the roof's own outline, k the k-th opening. */
  readonly ring: number;
}

/** A plane as it is laid: seen so that the start side is at 0, whichever side that is. */
export interface Face {
  readonly rings: readonly (readonly CoursePoint[])[];
  readonly edges: readonly Edge[];
  readonly widthIn: number;
  readonly heightIn: number;
}

const edgesOf = (places: readonly CoursePoint[], ring: number): Edge[] =>
  places.flatMap((from, index) => {
    const to = places[(index + 1) % places.length] as CoursePoint;
    if (from.upIn === to.upIn) return [];
    const [low, high] = from.upIn < to.upIn ? [from, to] : [to, from];
    const outer = Math.abs(low.alongIn - high.alongIn) <= HAIR_IN ? "gable" : "slant";
    return [{ low, high, kind: ring === 0 ? outer : "opening", ring }];
  });

/** The plane in inches, mirrored where it is laid from the right. */
export const faceOf = ({ outline, openings }: Plane, side: Side): Face => {
  const xs = outline.map(({ x }) => x);
  const ys = outline.map(({ y }) => y);
  const [leftFt, rightFt, eaveFt] = [Math.min(...xs), Math.max(...xs), Math.min(...ys)];
  const place = ({ x, y }: Point): CoursePoint => ({
    alongIn: tidy(feetToInches(side === "left" ? x - leftFt : rightFt - x)),
    upIn: tidy(feetToInches(y - eaveFt)),
  });
  const rings = [outline, ...openings].map((corners) => corners.map(place));
  return {
    rings,
    edges: rings.flatMap(edgesOf),
    widthIn: tidy(feetToInches(rightFt - leftFt)),
    heightIn: tidy(feetToInches(Math.max(...ys) - eaveFt)),
  };
};
