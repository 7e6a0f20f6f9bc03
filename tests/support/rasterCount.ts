import type { Counted, CountedPiece } from "./countedPiece";

/** A face of square inches: each is roof, opening, or outside. Rows go up from the eave, columns from the start side. */
export type Square = "roof" | "opening" | "outside";
interface RasterPanel {
  readonly widthIn: number;
  readonly heightIn: number;
  readonly setbackIn: number;
  readonly foldIn: number;
}

/** Whether an outline edge stands within some squares to one side; what is beyond an opening doesn't matter. */
const hasEdgeWithin = (row: readonly Square[], x: number, side: 1 | -1, squares: number): boolean => {
  for (let step = 1; step <= squares; step++) {
    const square = row[x + side * step] ?? "outside";
    if (square !== "roof") return square === "outside";
  }
  return false;
};

/** Squares within the setback of a vertical outline edge are covered by no panel. */
const withSetback = (face: readonly (readonly Square[])[], setbackIn: number): Square[][] =>
  face.map((row) =>
    row.map((square, x) =>
      square === "roof" && (hasEdgeWithin(row, x, -1, setbackIn) || hasEdgeWithin(row, x, 1, setbackIn))
        ? "outside"
        : square,
    ),
  );

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Flood-fills the squares of one panel's place into pieces. */
const piecesIn = (face: readonly (readonly Square[])[], from: Spot, to: Spot): Spot[][] => {
  const seen = new Set<string>();
  const flood = (start: Spot): Spot[] => {
    const found: Spot[] = [];
    const waiting = [start];
    for (let spot = waiting.pop(); spot; spot = waiting.pop()) {
      const { x, y } = spot;
      const isIn = x >= from.x && x < to.x && y >= from.y && y < to.y && face[y]?.[x] === "roof";
      if (!isIn || seen.has(`${x} ${y}`)) continue;
      seen.add(`${x} ${y}`);
      found.push(spot);
      waiting.push({ x: x - 1, y }, { x: x + 1, y }, { x, y: y - 1 }, { x, y: y + 1 });
    }
    return found;
  };
  const pieces: Spot[][] = [];
  for (let y = from.y; y < to.y; y++)
    for (let x = Math.max(0, from.x); x < to.x; x++) {
      const piece = flood({ x, y });
      if (piece.length > 0) pieces.push(piece);
    }
  return pieces;
};

/** Lays a face square inch by square inch, from the left, joints at whole inches. */
export const rasterCount = (
  squares: readonly (readonly Square[])[],
  panel: RasterPanel,
  firstJointIn: (course: number) => number,
): Counted => {
  const face = withSetback(squares, panel.setbackIn);
  const at = (x: number, y: number): Square => face[y]?.[x] ?? "outside";
  const wholeByCourse: number[] = [];
  const pieces: CountedPiece[] = [];
  for (let course = 1; (course - 1) * panel.heightIn < face.length; course++) {
    wholeByCourse.push(0);
    const low = (course - 1) * panel.heightIn;
    const high = Math.min(face.length, low + panel.heightIn);
    for (
      let left = firstJointIn(course) - panel.widthIn;
      left < (face[0]?.length ?? 0);
      left += panel.widthIn
    ) {
      const right = left + panel.widthIn;
      for (const spots of piecesIn(face, { x: left, y: low }, { x: right, y: high })) {
        const xs = spots.map(({ x }) => x);
        const [coverFrom, coverTo] = [Math.min(...xs), Math.max(...xs) + 1];
        const keepsLeft = spots.some(({ x, y }) => x === left && at(x - 1, y) === "roof");
        const keepsRight = spots.some(({ x, y }) => x === right - 1 && at(x + 1, y) === "roof");
        const outward =
          (side: 1 | -1) =>
          ({ x, y }: Spot): number => {
            const edge = side === 1 ? x + 1 : -x;
            return edge + (at(x + side, y) === "outside" ? panel.foldIn : 0);
          };
        const blankFrom = keepsLeft ? left : -Math.max(...spots.map(outward(-1)));
        const blankTo = keepsRight ? right : Math.max(...spots.map(outward(1)));
        const isFull = spots.length === panel.widthIn * panel.heightIn;
        const isBent =
          panel.foldIn > 0 &&
          spots.some(({ x, y }) => at(x - 1, y) === "outside" || at(x + 1, y) === "outside");
        if (isFull && !isBent) wholeByCourse[course - 1] = (wholeByCourse[course - 1] ?? 0) + 1;
        else
          pieces.push({
            course,
            positionIn: coverFrom,
            coverIn: coverTo - coverFrom,
            blankIn: blankTo - blankFrom,
            areaSqIn: spots.length,
            keepsLock: keepsLeft ? (keepsRight ? "both" : "left") : keepsRight ? "right" : "none",
          });
      }
    }
  }
  return { wholeByCourse, pieces };
};
