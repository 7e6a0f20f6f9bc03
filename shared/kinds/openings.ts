import { InputError } from "../inputError";
import type { Outline } from "../outline";
import { blocksOf } from "./blocks";
import { readFace } from "./outline";
import type { RangeKind } from "./kind";

const MOST_OPENINGS = 200;
const MOST_CORNERS_TOGETHER = 1000;

/** An opening's name in error messages, by its position in the range. */
export const openingName = (place: number): string => `opening ${place}`;

/** Chimneys, skylights: outlines one below the other with a blank row between, each with or without a heading row. */
export const openings: RangeKind<readonly Outline[]> = {
  shape: "range",
  takes: "outlines of two columns, x and y in ft on the sloped face, a blank row between two of them",
  read: (cells, label) => {
    const blocks = blocksOf(cells);
    if (blocks.length > MOST_OPENINGS)
      throw new InputError(`${label} must be at most ${MOST_OPENINGS} outlines, got ${blocks.length}`);
    const corners = blocks.flat().length;
    if (corners > MOST_CORNERS_TOGETHER)
      throw new InputError(
        `${label} must have at most ${MOST_CORNERS_TOGETHER} corners together, got ${corners}`,
      );
    return blocks.map((block, index) => readFace(block, openingName(index + 1)));
  },
};
