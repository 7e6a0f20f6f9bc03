/** A kind of trim with what is usual for it: each is a default that the maker's guide replaces. */
export interface TrimKind {
  readonly label: string;
  /** The kind of roof edge whose length it takes; absent where its length is typed. */
  readonly edge?: string;
  readonly stockIn: number;
  readonly lapIn: number;
  /** On centre; 0 where it takes none. */
  readonly clipSpacingIn: number;
  readonly nailSpacingIn: number;
  /** Edges that are fastened: a valley has two. */
  readonly rows: number;
  readonly source: string;
}

const COMMON_PRACTICE = "common practice, no published source";
const TEN_FEET_IN = 120;
const ON_CENTRE_IN = 12;

const kind = (label: string, lapIn: number, differing: Partial<TrimKind>): TrimKind => ({
  label,
  stockIn: TEN_FEET_IN,
  lapIn,
  clipSpacingIn: ON_CENTRE_IN,
  nailSpacingIn: 0,
  rows: 1,
  source: COMMON_PRACTICE,
  ...differing,
});

const NAILED = { clipSpacingIn: 0, nailSpacingIn: ON_CENTRE_IN } as const;

/** Every kind of trim on a roof of metal shingles, in the order in which it goes on. */
export const TRIM_KINDS = {
  dripEdge: kind("drip edge", 2, {
    ...NAILED,
    edge: "eave",
    nailSpacingIn: 10,
    source:
      "Navy NAVEDTRA 14045, sample specification: fasteners at most 10 in on centre; lap from common practice",
  }),
  eaveStarter: kind("eave starter", 0, { ...NAILED, edge: "eave" }),
  valley: kind("valley", 4, {
    edge: "valley",
    rows: 2,
    source: "IRC R905.4.6, from memory: end lap 4 in; the rest common practice. The local code governs",
  }),
  gableChannel: kind("gable channel", 2, { edge: "rake" }),
  sideWall: kind("side wall", 2, {}),
  headWall: kind("head wall", 2, NAILED),
  chimneyFront: kind("chimney front", 2, NAILED),
  chimneySide: kind("chimney side", 2, {}),
  chimneyBack: kind("chimney back", 2, NAILED),
  /** Counted by the piece: a run is one flashing. */
  pipeFlashing: kind("pipe flashing", 0, { ...NAILED, nailSpacingIn: 6 }),
  hip: kind("hip", 2, { edge: "hip", rows: 2 }),
  ridge: kind("ridge", 2, { edge: "ridge", rows: 2 }),
} as const;
