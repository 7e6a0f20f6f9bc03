import type { Edge, Face } from "./face";

/** A side as it passes through a slab. */
export interface Crossing {
  readonly edge: Edge;
  readonly atLowIn: number;
  readonly atHighIn: number;
}

/** A slab of the plane sweep: a level band in which no side begins or ends, with the sides through it from near to far. */
export interface Slab {
  readonly lowIn: number;
  readonly highIn: number;
  readonly crossings: readonly Crossing[];
}

const alongAt = ({ low, high }: Edge, upIn: number): number => {
  if (upIn === low.upIn) return low.alongIn;
  if (upIn === high.upIn) return high.alongIn;
  return low.alongIn + ((upIn - low.upIn) / (high.upIn - low.upIn)) * (high.alongIn - low.alongIn);
};

const middleOf = ({ atLowIn, atHighIn }: Crossing): number => atLowIn + atHighIn;

/** Divides the face between two levels into slabs at every corner. */
export const slabsBetween = (face: Face, lowIn: number, highIn: number): Slab[] => {
  const edges = face.edges.filter(({ low, high }) => low.upIn < highIn && high.upIn > lowIn);
  const cornersIn = edges
    .flatMap(({ low, high }) => [low.upIn, high.upIn])
    .filter((upIn) => upIn > lowIn && upIn < highIn);
  const levelsIn = [...new Set([lowIn, ...cornersIn, highIn])].sort((a, b) => a - b);
  return levelsIn.slice(1).map((toIn, index) => {
    const fromIn = levelsIn[index] as number;
    const crossings = edges
      .filter(({ low, high }) => low.upIn <= fromIn && high.upIn >= toIn)
      .map((edge) => ({ edge, atLowIn: alongAt(edge, fromIn), atHighIn: alongAt(edge, toIn) }))
      .sort((a, b) => middleOf(a) - middleOf(b));
    return { lowIn: fromIn, highIn: toIn, crossings };
  });
};
