import { slopedAreaSqFt } from "../../functions/roof/measures";
import type { Roof } from "../../functions/roof/roofParts";
import { edgeLabel, edgeLine } from "./edgeLines";
import { PICTURE_STYLE, shadeClass } from "./pictureStyle";
import { kindInWords, kindsPresent, legendHeight, planLegend } from "./planLegend";
import { planeLabel } from "./planeLabel";
import { planScale } from "./planScale";
import { element, pointList, svgPicture } from "./svg";
import { wallLines } from "./wallLines";

const BELOW_LEGEND_PX = 20;

/** What the roof is, in a sentence: for those who can't see it drawn. */
export const roofInWords = ({ planes, edges }: Roof): string => {
  const areaSqFt = planes.reduce((sum, plane) => sum + slopedAreaSqFt(plane), 0);
  const kinds = kindsPresent(edges).map((kind) => kindInWords(kind, edges));
  return `${planes.length} ${planes.length === 1 ? "plane" : "planes"}, ${areaSqFt.toFixed(1)} sq ft on the slope: ${kinds.join("; ")}.`;
};

/** The roof from above: planes numbered, pitch arrows down the slope, edges by kind with their true lengths. */
export const roofPlanPicture = (roof: Roof): string => {
  const { planes, edges } = roof;
  const scale = planScale(planes.flatMap(({ corners }) => corners));
  return svgPicture({
    id: "roof-plan",
    width: scale.width,
    height: scale.height + legendHeight(edges) + BELOW_LEGEND_PX,
    title: "Roof plan",
    description: roofInWords(roof),
    style: PICTURE_STYLE,
    content: [
      ...planes.map(({ corners }) =>
        element("polygon", { class: shadeClass(0), points: pointList(corners.map(scale.toPixel)) }),
      ),
      ...wallLines(roof, scale),
      ...edges.map((edge) => edgeLine(edge, scale)),
      ...planes.map((plane) => planeLabel(plane, scale)),
      ...edges.flatMap((edge) => edgeLabel(edge, scale)),
      ...planLegend(edges, scale.height),
    ],
  });
};
