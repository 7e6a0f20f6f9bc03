import { trueLengthFt } from "../../../functions/roof/roofMeasures";
import { EDGE_KINDS, type EdgeKind, type RoofEdge } from "../../../functions/roof/roofParts";
import { tape } from "./edgeLines";
import { edgeClass } from "./roofStyle";
import { element, escapeXml } from "../svg";

const COLUMNS = 3;
const COLUMN_PX = 270;
const ROW_PX = 26;
const LINE_PX = 54;
const LEFT_PX = 40;

/** The total of one kind of edge, for the legend and the description: `hip 72' 0", 4 edges`. */
export const edgeSummary = (kind: EdgeKind, edges: readonly RoofEdge[]): string => {
  const ofKind = edges.filter((edge) => edge.kind === kind);
  const totalFt = ofKind.reduce((sum, edge) => sum + trueLengthFt(edge), 0);
  return `${kind} ${tape(totalFt)}, ${ofKind.length} ${ofKind.length === 1 ? "edge" : "edges"}`;
};

export const edgeKindsIn = (edges: readonly RoofEdge[]): EdgeKind[] =>
  EDGE_KINDS.filter((kind) => edges.some((edge) => edge.kind === kind));

export const legendHeight = (edges: readonly RoofEdge[]): number =>
  Math.ceil(edgeKindsIn(edges).length / COLUMNS) * ROW_PX;

/** One legend entry for each kind of edge on the roof, with its total true length. */
export const planLegend = (edges: readonly RoofEdge[], top: number): string[] =>
  edgeKindsIn(edges).flatMap((kind, index) => {
    const x = LEFT_PX + (index % COLUMNS) * COLUMN_PX;
    const y = top + (Math.floor(index / COLUMNS) + 0.5) * ROW_PX;
    return [
      element("line", { class: `roof-edge ${edgeClass(kind)}`, x1: x, y1: y, x2: x + LINE_PX, y2: y }),
      element("text", { class: "roof-legend", x: x + LINE_PX + 10, y }, escapeXml(edgeSummary(kind, edges))),
    ];
  });
