import type { Layout } from "../../functions/layout/engine/layoutResult";

/** A cut piece as a slow, independent count finds it. */
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

/** How far two counts may differ and still mean the same piece. */
const ALIKE_IN = 0.05;

/** Sorts by position, then by size for pieces that start at the same position, one above the other. */
const inOrder = (a: CountedPiece, b: CountedPiece): number =>
  (["course", "positionIn", "coverIn", "areaSqIn"] as const)
    .map((field) => a[field] - b[field])
    .find((difference) => Math.abs(difference) > ALIKE_IN) ?? 0;

const LENGTHS = ["positionIn", "coverIn", "blankIn", "areaSqIn"] as const;

/** Two counts agree if they find the same pieces with the same sizes. */
export const expectSameCount = (one: Counted, other: Counted, tolerance: number): void => {
  const [ours, theirs] = [[...one.pieces].sort(inOrder), [...other.pieces].sort(inOrder)];
  const inWords = (piece: CountedPiece): string => `${piece.course} ${piece.keepsLock}`;
  expect(one.wholeByCourse).toEqual(other.wholeByCourse);
  expect(ours.map(inWords)).toEqual(theirs.map(inWords));
  // One call for all: on thousands of layouts `expect` takes longer than the count.
  const unlike = ours
    .map((piece, index) => [piece, theirs[index]] as const)
    .filter(
      ([piece, twin]) =>
        !LENGTHS.every((length) => Math.abs(piece[length] - (twin?.[length] ?? NaN)) < tolerance),
    );
  expect(unlike).toEqual([]);
};

type Ring = Layout["outline"];

/** Shoelace formula: a hole's clockwise ring is subtracted from the outline around it. */
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

/** The engine's result in the same form. */
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
