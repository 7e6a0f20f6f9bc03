import type { Outline, Point } from "../../shared/outline";

/** A node of the skeleton: where it stands on plan, and how far from its sides. */
export type OracleNode = Point & { readonly distance: number };

export interface Oracle {
  /** The faces of the equal-pitch skeleton as rings of nodes; undefined where the oracle has no answer. */
  skeleton(rings: readonly Outline[]): readonly (readonly OracleNode[])[] | undefined;
}

/**
 * An independent straight skeleton to measure and test against, never shipped: the package's wrapper is under the MIT
 * license, the kernel inside it under a copyleft one. It takes the outer ring counterclockwise and courtyards clockwise,
 * looks for a browser's `self` and `window`, and reckons in 32-bit floats.
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
