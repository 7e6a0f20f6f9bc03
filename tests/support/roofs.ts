import { trueLengthFt } from "../../functions/roof/roofMeasures";
import { roofOver } from "../../functions/roof/roof";
import type { EdgeKind, Roof, RoofEdge } from "../../functions/roof/roofParts";
import type { SideBuild } from "../../functions/roof/roofSides";
import type { RoofSide } from "../../functions/roof/skeleton/roofSide";
import type { Outline } from "../../shared/outline";

export type Pairs = readonly (readonly [number, number])[];

export const ringOf = (pairs: Pairs): Outline => pairs.map(([x, y]) => ({ x, y }));

export const rectangle = (length: number, width: number): Pairs => [
  [0, 0],
  [length, 0],
  [length, width],
  [0, width],
];

interface Options {
  readonly pitch: number | readonly number[];
  readonly gables?: readonly number[];
  readonly overhangFt?: number | readonly number[];
  readonly rakeOverhangFt?: number;
}

const on = (value: number | readonly number[], index: number): number =>
  typeof value === "number" ? value : (value[index] ?? NaN);

/** A roof from plain numbers; the first ring is the building's, others are courtyards. */
export const roofFrom = (rings: Pairs | readonly Pairs[], options: Options): Roof => {
  const { pitch, gables = [], overhangFt = 0, rakeOverhangFt } = options;
  const several = (typeof rings[0]?.[0] === "number" ? [rings] : rings) as readonly Pairs[];
  const builds = several.flat().map((_, index): SideBuild => {
    const isGable = gables.includes(index + 1);
    const reach = on(overhangFt, index);
    return {
      pitch: isGable ? "gable" : on(pitch, index),
      overhangFt: isGable ? (rakeOverhangFt ?? reach) : reach,
    };
  });
  return roofOver(several.map(ringOf), builds);
};

export const edgesOf = ({ edges }: Roof, kind: EdgeKind): RoofEdge[] =>
  edges.filter((edge) => edge.kind === kind);

/** The true lengths of the edges of a kind, from short to long. */
export const lengthsOf = (roof: Roof, kind: EdgeKind): number[] =>
  edgesOf(roof, kind)
    .map(trueLengthFt)
    .sort((a, b) => a - b);

export const expectNumbers = (
  got: readonly number[],
  expected: readonly number[],
  tolerance = 1e-9,
): void => {
  expect(got).toHaveLength(expected.length);
  got.forEach((value, index) => {
    expect(Math.abs(value - (expected[index] ?? NaN))).toBeLessThanOrEqual(tolerance);
  });
};

/** A side for tests in which only its number counts. */
export const numberedSide = (number: number): RoofSide => ({
  number,
  from: { x: 0, y: 0 },
  to: { x: 1, y: 0 },
  direction: { x: 1, y: 0 },
  inward: { x: 0, y: 1 },
  lineFt: 0,
  pitch: 6,
  runPerRise: 2,
  eaveHeightFt: 0,
});
