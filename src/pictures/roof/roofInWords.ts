import { slopedAreaSqFt } from "../../../functions/roof/roofMeasures";
import type { Roof } from "../../../functions/roof/roofParts";
import { kindInWords, kindsPresent } from "./planLegend";

/** What the roof is, in a sentence: for those who can't see it drawn. */
export const roofInWords = ({ planes, edges }: Roof): string => {
  const areaSqFt = planes.reduce((sum, plane) => sum + slopedAreaSqFt(plane), 0);
  const kinds = kindsPresent(edges).map((kind) => kindInWords(kind, edges));
  return `${planes.length} ${planes.length === 1 ? "plane" : "planes"}, ${areaSqFt.toFixed(1)} sq ft on the slope: ${kinds.join("; ")}.`;
};
