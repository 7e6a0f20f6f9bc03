import { slopedAreaSqFt } from "../../../functions/roof/roofMeasures";
import type { Roof } from "../../../functions/roof/roofParts";
import { edgeSummary, edgeKindsIn } from "./planLegend";

/** The roof in one sentence, for screen readers. */
export const describeRoof = ({ planes, edges }: Roof): string => {
  const areaSqFt = planes.reduce((sum, plane) => sum + slopedAreaSqFt(plane), 0);
  const kinds = edgeKindsIn(edges).map((kind) => edgeSummary(kind, edges));
  return `${planes.length} ${planes.length === 1 ? "plane" : "planes"}, ${areaSqFt.toFixed(1)} sq ft on the slope: ${kinds.join("; ")}.`;
};
