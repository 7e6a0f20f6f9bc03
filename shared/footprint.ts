import type { Outline } from "./outline";

/** The wall lines on plan, in ft: the ring around the building, then the rings of its courtyards, as typed. */
export type Footprint = readonly Outline[];

/** Sides are numbered on through the rings: side i runs from corner i to the next corner of its ring. */
export const sideCount = (footprint: Footprint): number =>
  footprint.reduce((count, ring) => count + ring.length, 0);
