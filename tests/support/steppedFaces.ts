import fc from "fast-check";
import type { Point } from "../../shared/outline";
import type { Square } from "./rasterCount";

interface Column {
  readonly widthIn: number;
  readonly bottomIn: number;
  readonly topIn: number;
}

interface Block {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A face with level and vertical sides on whole inches, both as square inches and as corners in feet. */
export interface SteppedFace {
  readonly squares: readonly (readonly Square[])[];
  readonly outline: readonly Point[];
  readonly openings: readonly (readonly Point[])[];
}

const inFeet = ([x, y]: readonly [number, number]): Point => ({ x: x / 12, y: y / 12 });

/** Columns side by side, each overlapping the next in height, become a ring without repeated corners. */
const outlineOf = (columns: readonly Column[]): Point[] => {
  const bottom: [number, number][] = [];
  const top: [number, number][] = [];
  let x = 0;
  for (const { widthIn, bottomIn, topIn } of columns) {
    bottom.push([x, bottomIn], [x + widthIn, bottomIn]);
    top.unshift([x + widthIn, topIn], [x, topIn]);
    x += widthIn;
  }
  return [...bottom, ...top].map(inFeet);
};

const squaresOf = (columns: readonly Column[]): Square[][] => {
  const height = Math.max(...columns.map(({ topIn }) => topIn));
  return Array.from({ length: height }, (_, y) =>
    columns.flatMap(({ widthIn, bottomIn, topIn }) =>
      Array.from({ length: widthIn }, (): Square => (y >= bottomIn && y < topIn ? "roof" : "outside")),
    ),
  );
};

/** Cuts out those blocks that lie in the roof and overlap no other. */
const cutOut = (columns: readonly Column[], blocks: readonly Block[]): SteppedFace => {
  const squares = squaresOf(columns);
  const kept = blocks.filter(({ x, y, width, height }) => {
    const rows = squares.slice(y, y + height).map((row) => row.slice(x, x + width));
    const fits =
      rows.length === height &&
      rows.every((row) => row.length === width && row.every((each) => each === "roof"));
    if (fits) for (let v = y; v < y + height; v++) squares[v]?.fill("opening", x, x + width);
    return fits;
  });
  return {
    squares,
    outline: outlineOf(columns),
    openings: kept.map(({ x, y, width, height }) =>
      (
        [
          [x, y],
          [x + width, y],
          [x + width, y + height],
          [x, y + height],
        ] as const
      ).map(inFeet),
    ),
  };
};

const column = fc.record({
  widthIn: fc.integer({ min: 1, max: 14 }),
  bottomIn: fc.integer({ min: 0, max: 6 }),
  rise: fc.integer({ min: 1, max: 14 }),
});

const block = fc.record({
  x: fc.integer({ min: 0, max: 40 }),
  y: fc.integer({ min: 0, max: 14 }),
  width: fc.integer({ min: 1, max: 9 }),
  height: fc.integer({ min: 1, max: 7 }),
});

/** Neighbors overlap in height, so that the face hangs together; the lowest column stands on the eave. */
const settle = (columns: readonly { widthIn: number; bottomIn: number; rise: number }[]): Column[] => {
  const lowest = Math.min(...columns.map(({ bottomIn }) => bottomIn));
  return columns.map(({ widthIn, bottomIn, rise }) => ({
    widthIn,
    bottomIn: bottomIn - lowest,
    topIn: 7 + rise,
  }));
};

export const steppedFaces: fc.Arbitrary<SteppedFace> = fc
  .tuple(fc.array(column, { minLength: 1, maxLength: 5 }), fc.array(block, { minLength: 0, maxLength: 4 }))
  .map(([columns, blocks]) => cutOut(settle(columns), blocks));
