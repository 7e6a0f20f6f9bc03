import { trueLengthFt } from "../../../functions/roof/roofMeasures";
import type { RoofEdge } from "../../../functions/roof/roofParts";
import { writeTape } from "../../../shared/lengthText";
import { edgeClass } from "./roofStyle";
import type { PlanScale } from "./planScale";
import { element } from "../svg";
import { textAlong, textWidthPx } from "./textAlong";

/** Lengths are shown to the nearest 1/16 in, like a tape measure. */
const TAPE_DENOMINATOR = 16;
export const tape = (lengthFt: number): string => writeTape(lengthFt, TAPE_DENOMINATOR);

/** The distance of a label from its line: outside the roof, and beside a line within it. */
const OUTSIDE_PX = 14;
const BESIDE_PX = 11;

export const edgeLine = ({ kind, from, to }: RoofEdge, scale: PlanScale): string => {
  const [start, end] = [scale.toPixel(from), scale.toPixel(to)];
  return element("line", {
    class: `roof-edge ${edgeClass(kind)}`,
    x1: start.x,
    y1: start.y,
    x2: end.x,
    y2: end.y,
  });
};

/** The longest label that fits along an edge: its kind and true length, the length alone, or none. */
const labelThatFits = (edge: RoofEdge, roomPx: number): string | undefined => {
  const length = tape(trueLengthFt(edge));
  return [`${edge.kind} ${length}`, length].find((label) => textWidthPx(label) <= roomPx);
};

export const edgeLabel = (edge: RoofEdge, scale: PlanScale): string[] => {
  const [start, end] = [scale.toPixel(edge.from), scale.toPixel(edge.to)];
  const label = labelThatFits(edge, Math.hypot(end.x - start.x, end.y - start.y));
  // The plane is on the edge's left, so its right is outside.
  if (!label) return [];
  return edge.otherPlane
    ? [textAlong(label, start, end, BESIDE_PX, "roof-inner")]
    : [textAlong(label, start, end, OUTSIDE_PX, "roof-outer")];
};
