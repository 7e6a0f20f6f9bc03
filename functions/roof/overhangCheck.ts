import { noAnswer } from "../../shared/inputError";
import { segmentsMeet } from "../../shared/outlineCrossing";
import type { EdgePiece } from "./eaves";
import { dot, minus } from "./skeleton/planVectors";

/** Whether an edge still runs in the direction of its wall; a skirt may run either way. */
const isForward = ({ side, from, to, isSkirt }: EdgePiece): boolean =>
  isSkirt || dot(side.direction, minus(to, from)) > 0;

const touch = (a: EdgePiece, b: EdgePiece): boolean =>
  a.to !== b.from && b.to !== a.from && segmentsMeet(a.from, a.to, b.from, b.to);

/** Rejects overhangs that run into each other, since the outer edge of the roof would cross itself. */
export const checkOverhangs = (rings: readonly (readonly EdgePiece[])[]): void => {
  const pieces = rings.flat();
  const turned = pieces.find((piece) => !isForward(piece));
  if (turned)
    throw noAnswer(`the overhangs at the two ends of side ${turned.side.number} run into each other`);
  pieces.forEach((a, index) => {
    const b = pieces.slice(index + 1).find((other) => touch(a, other));
    if (b) throw noAnswer(`the overhangs of sides ${a.side.number} and ${b.side.number} run into each other`);
  });
};
