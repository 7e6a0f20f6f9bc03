import type { Footprint } from "../../shared/footprint";
import { noAnswer } from "../../shared/inputError";
import { twiceSignedArea, type Outline, type Point } from "../../shared/outline";
import { PITCH_RUN } from "../../shared/units";
import { around, distance, dot, minus } from "./skeleton/planVectors";
import { bearing, isGable, isInner, type RoofSide } from "./skeleton/roofSide";

/** What a side carries: a plane of this pitch (rise on 12) or a gable, and its overhang past the wall. */
export interface SideBuild {
  readonly pitch: number | "gable";
  readonly overhangFt: number;
}

const planeOrGable = ({ pitch, overhangFt }: SideBuild, wallLineFt: number) =>
  pitch === "gable"
    ? { lineFt: wallLineFt - overhangFt, pitch: 0, runPerRise: 0, eaveHeightFt: 0 }
    : {
        lineFt: wallLineFt,
        pitch,
        runPerRise: PITCH_RUN / pitch,
        eaveHeightFt: (-overhangFt * pitch) / PITCH_RUN,
      };

const sideOf = (number: number, from: Point, to: Point, build: SideBuild): RoofSide => {
  const lengthFt = distance(from, to);
  const { x, y } = minus(to, from);
  const direction = { x: x / lengthFt, y: y / lengthFt };
  const inward = { x: -direction.y, y: direction.x };
  return { number, from, to, direction, inward, ...planeOrGable(build, dot(inward, from)) };
};

/** The sides of one ring, reversed if necessary so that it runs counterclockwise, or clockwise for a courtyard. */
const ringSides = (
  ring: Outline,
  first: number,
  builds: readonly SideBuild[],
  isCourtyard: boolean,
): RoofSide[] => {
  const turned = twiceSignedArea(ring) > 0 === isCourtyard;
  const sides = ring.map((corner, index) => {
    const [from, to] = turned ? [around(ring, index + 1), corner] : [corner, around(ring, index + 1)];
    return sideOf(first + index, from, to, builds[first + index - 1] as SideBuild);
  });
  return turned ? sides.reverse() : sides;
};

/** Lines closer than this are the same line. */
const SAME_LINE_FT = 1e-6;

/** Rejects a corner that can't exist between two sides, whatever the rest of the roof. */
const checkCorner = (before: RoofSide, after: RoofSide): void => {
  const [a, b] = [before.number, after.number];
  const gables = [before, after].filter(isGable);
  if (isInner(before, after) && gables.length === 1) {
    const gable = gables[0] === before ? a : b;
    throw noAnswer(
      `side ${gable} can't be a gable: at the inner corner of sides ${a} and ${b} its wall would stand up through the roof`,
    );
  }
  if (bearing(before, after) !== "same way") return;
  if (gables.length === 1)
    throw noAnswer(
      `sides ${a} and ${b} are in one line, one a gable and one not: the roof can't close between them`,
    );
  if (gables.length === 2 && Math.abs(before.lineFt - after.lineFt) > SAME_LINE_FT)
    throw noAnswer(`sides ${a} and ${b} are gables in line, so they take the same rake overhang`);
  if (before.pitch !== after.pitch)
    throw noAnswer(
      `sides ${a} and ${b} are in one line, so their planes take the same pitch, got ${before.pitch} and ${after.pitch} in 12`,
    );
};

/** The sides ring by ring, in order around the ring, each with the building on its left. */
export const roofSides = (footprint: Footprint, builds: readonly SideBuild[]): RoofSide[][] => {
  let first = 1;
  const rings = footprint.map((ring, index) => {
    const sides = ringSides(ring, first, builds, index > 0);
    first += ring.length;
    return sides;
  });
  if (rings.flat().every(isGable)) throw noAnswer("every side is a gable, so no side carries a plane");
  rings.forEach((ring) => {
    ring.forEach((side, index) => {
      checkCorner(side, around(ring, index + 1));
    });
  });
  return rings;
};
