import type { Layout } from "../../functions/layout/engine/listing";

/** What a slow, independent count finds of a piece that isn't whole. Inches, to a millionth. */
export interface CountedPiece {
  readonly course: number;
  readonly positionIn: number;
  readonly coverIn: number;
  readonly blankIn: number;
  readonly areaSqIn: number;
  readonly keepsLock: string;
}

export interface Counted {
  readonly wholeByCourse: readonly number[];
  readonly pieces: readonly CountedPiece[];
}

const rounded = (value: number): number => Math.round(value * 1e5) / 1e5 + 0;

const sortKey = (piece: CountedPiece): string =>
  [piece.course, piece.positionIn, piece.coverIn, piece.areaSqIn]
    .map((n) => n.toFixed(3).padStart(12))
    .join();

/** The same to rounding, in one order, so that two counts can be compared. */
export const comparable = ({ wholeByCourse, pieces }: Counted): Counted => ({
  wholeByCourse,
  pieces: pieces
    .map((piece) => ({
      ...piece,
      positionIn: rounded(piece.positionIn),
      coverIn: rounded(piece.coverIn),
      blankIn: rounded(piece.blankIn),
      areaSqIn: rounded(piece.areaSqIn),
    }))
    .sort((a, b) => (sortKey(a) < sortKey(b) ? -1 : 1)),
});

type Ring = Layout["outline"];

/** Shoelace: a hole's clockwise ring counts against the outline around it. */
export const areaOf = (rings: readonly Ring[]): number =>
  rings.reduce(
    (sum, ring) =>
      sum +
      ring.reduce((twice, from, index) => {
        const to = ring[(index + 1) % ring.length] ?? from;
        return twice + from.xIn * to.yIn - to.xIn * from.yIn;
      }, 0) /
        2,
    0,
  );

/** What the engine says, in the same words. */
export const countedBy = ({ courses }: Layout): Counted => ({
  wholeByCourse: courses.map(({ whole }) => whole),
  pieces: courses.flatMap(({ course, cuts }) =>
    cuts.map(({ positionIn, coverIn, blankIn, rings, keepsLock }) => ({
      course,
      positionIn,
      coverIn,
      blankIn,
      areaSqIn: areaOf(rings),
      keepsLock,
    })),
  ),
});
