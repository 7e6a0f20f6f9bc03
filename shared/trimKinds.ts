/** What a run of trim follows: an edge of the roof, a wall that meets it, or a side of a chimney. */
export const TRIM_EDGES = [
  "eave",
  "gable",
  "ridge",
  "hip",
  "valley",
  "pitch break",
  "eave step",
  "side wall",
  "head wall",
  "chimney front",
  "chimney side",
  "chimney back",
  "pipe",
] as const;
export type TrimEdge = (typeof TRIM_EDGES)[number];

/** A kind of trim with what is usual for it: each is a default that the maker's guide replaces. */
export interface TrimKind {
  readonly label: string;
  /** The runs that it takes: all those of this edge. */
  readonly follows: TrimEdge;
  /** Where left out, as for all trim on the panel sheet; so are the lap and the spacings. */
  readonly stockIn?: number;
  readonly lapIn?: number;
  /** Edges of the trim that are clipped, and that are nailed: a valley has two. */
  readonly clippedEdges: number;
  readonly nailedEdges: number;
  readonly nailSpacingIn?: number;
  readonly source: string;
}

const COMMON_PRACTICE = "common practice, no published source";
const CLIPPED = { clippedEdges: 1, nailedEdges: 0, source: COMMON_PRACTICE };
const NAILED = { clippedEdges: 0, nailedEdges: 1, source: COMMON_PRACTICE };

/**
 * Every kind of trim on a roof of metal shingles, in the order of installation.
 *
 * To add a kind of trim, add its entry here, where it is installed, and nothing else: the Trims sheet, the takeoff and the order
 * list what stands here. If it follows an edge of its own, add the edge to TRIM_EDGES too. Say in `source` where its usual values
 * come from. A test fails if a kind follows no known edge, has no fastener, or shares its label with another.
 */
export const TRIM_KINDS = {
  dripEdge: {
    ...NAILED,
    label: "drip edge",
    follows: "eave",
    nailSpacingIn: 10,
    source:
      "Navy NAVEDTRA 14045, sample specification: fasteners at most 10 in on center. The local code governs",
  },
  eaveStarter: { ...NAILED, label: "eave starter", follows: "eave" },
  valley: {
    ...CLIPPED,
    label: "valley",
    follows: "valley",
    lapIn: 4,
    clippedEdges: 2,
    source: "IRC R905.4.6, from memory, any edition: end lap 4 in. The local code governs",
  },
  gableChannel: { ...CLIPPED, label: "gable channel", follows: "gable" },
  pitchBreak: { ...CLIPPED, label: "pitch break", follows: "pitch break" },
  sideWall: { ...CLIPPED, label: "side wall", follows: "side wall" },
  headWall: { ...NAILED, label: "head wall", follows: "head wall" },
  chimneyFront: { ...NAILED, label: "chimney front", follows: "chimney front" },
  chimneySide: { ...CLIPPED, label: "chimney side", follows: "chimney side" },
  chimneyBack: { ...NAILED, label: "chimney back", follows: "chimney back" },
  /** A piece each: its stock is as long as the edge of one flashing that is nailed. */
  pipeFlashing: { ...NAILED, label: "pipe flashing", follows: "pipe", stockIn: 48, nailSpacingIn: 6 },
  hip: { ...CLIPPED, label: "hip", follows: "hip", clippedEdges: 2 },
  ridge: { ...CLIPPED, label: "ridge", follows: "ridge", clippedEdges: 2 },
} as const satisfies Record<string, TrimKind>;
