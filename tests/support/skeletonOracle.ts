import type { Outline, Point } from "../../shared/outline";

/** A node of the skeleton: its position on plan and its distance from its sides. */
export type OracleNode = Point & { readonly distance: number };

export interface Oracle {
  /** The faces of the equal-pitch skeleton as rings of nodes; undefined if the oracle has no answer. */
  skeleton(rings: readonly Outline[]): readonly (readonly OracleNode[])[] | undefined;
}

/**
 * An independent straight skeleton to measure and test against. It never ships: the package's wrapper is under the MIT license,
 * but the kernel inside is under a copyleft license. It needs the outer ring counterclockwise, courtyards clockwise and a browser's
 * `self` and `window`, and it calculates in 32-bit floats.
 */
export const loadOracle = async (): Promise<Oracle> => {
  Object.assign(globalThis, { self: globalThis, window: globalThis });
  const { SkeletonBuilder } = await import("straight-skeleton");
  await SkeletonBuilder.init();
  return {
    skeleton: (rings) => {
      const closed = rings.map((ring) => [...ring, ...ring.slice(0, 1)].map(({ x, y }) => [x, y]));
      const answer = SkeletonBuilder.buildFromPolygon(closed);
      if (!answer) return undefined;
      const nodes = answer.vertices.map(([x, y, distance]): OracleNode => ({ x, y, distance }));
      return answer.polygons.map((polygon) => polygon.map((index) => nodes[index] as OracleNode));
    },
  };
};
