import { wholeCount } from "./rounding";

/** Pieces that reach a length, each laid over the one before by a lap less than itself; none where there is no length. */
export const lappedPieces = (length: number, piece: number, lap: number): number =>
  wholeCount(length / piece) === 0 ? 0 : Math.max(1, wholeCount((length - lap) / (piece - lap)));
