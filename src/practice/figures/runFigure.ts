import { horizontalDimension, box, face, FIGURE_WIDTH, line, type Figure } from "../../pictures/figure";

const LEFT = 40;
const WIDTH = FIGURE_WIDTH - 2 * LEFT;
const TOP = 30;
const THICK = 22;

/** A run along a roof edge, to scale, with its first piece or space marked off. */
export const runFigure = (runIn: number, pieceIn: number, labels: { run: string; piece: string }): Figure => {
  const piece = (pieceIn / runIn) * WIDTH;
  return {
    width: FIGURE_WIDTH,
    height: TOP + THICK + 90,
    description: "A run along a roof edge, to scale, with its first piece or space marked off.",
    marks: [
      face("metal", ...box(LEFT, TOP, WIDTH, THICK)),
      line("edge", { x: LEFT + piece, y: TOP - 8 }, { x: LEFT + piece, y: TOP + THICK + 8 }),
      line("edge", { x: LEFT, y: TOP - 8 }, { x: LEFT, y: TOP + THICK + 8 }),
      ...horizontalDimension(LEFT, LEFT + piece, TOP + THICK + 18, labels.piece),
      ...horizontalDimension(LEFT, LEFT + WIDTH, TOP + THICK + 52, labels.run),
    ],
  };
};
