import { feetToInches } from "../../../shared/units";
import type { Outline, Point } from "../../../shared/outline";
import type { Side } from "../../../shared/layoutStart";
import type { EndKind } from "./trapezoid";
import { HAIR_IN, tidy } from "./precision";

/** A roof plane: its outline and its openings, in feet on the sloped face. */
export interface Plane {
  readonly outline: Outline;
  readonly openings: readonly Outline[];
}

/** A point on the face in laying coordinates: inches from the outermost point of the start side, inches up from the lowest point. */
export interface CoursePoint {
  readonly alongIn: number;
  readonly upIn: number;
}

/** A side of an outline that isn't level, from its lower to its upper end. */
export interface Edge {
  readonly low: CoursePoint;
  readonly high: CoursePoint;
  readonly kind: EndKind;
  /** 0 for the outline of the roof, k for opening k. */
  readonly ring: number;
}

/** A plane in laying coordinates: the start side is at 0, whether it is left or right. */
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

/** The plane in inches, mirrored if it is laid from the right. */
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
