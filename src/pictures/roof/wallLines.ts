import type { Roof } from "../../../functions/roof/roofParts";
import { isGable } from "../../../functions/roof/skeleton/roofSide";
import type { PlanScale } from "./planScale";
import { element } from "../svg";
import { textAlong } from "./textAlong";

/** Clear of the edge labels. */
const SIDE_LABEL_PX = 32;

/** The walls under the roof as dashed lines, with the number of each side outside it. */
export const wallLines = ({ sides, outerEdges }: Roof, scale: PlanScale): string[] => [
  ...sides.map(({ from, to }) => {
    const [start, end] = [scale.toPixel(from), scale.toPixel(to)];
    return element("line", { class: "roof-wall-line", x1: start.x, y1: start.y, x2: end.x, y2: end.y });
  }),
  ...outerEdges
    .flat()
    .filter(({ isSkirt }) => !isSkirt)
    .map(({ side, from, to }) => {
      const label = `side ${side.number}${isGable(side) ? ", gable" : ""}`;
      return textAlong(label, scale.toPixel(from), scale.toPixel(to), SIDE_LABEL_PX, "roof-quiet");
    }),
];
