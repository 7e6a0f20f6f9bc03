import type { Roof } from "../../functions/roof/roofParts";
import { edgeLabel, edgeLine } from "./edgeLines";
import { PICTURE_STYLE, shadeClass } from "./pictureStyle";
import { legendHeight, planLegend } from "./planLegend";
import { planeLabel } from "./planeLabel";
import { planScale } from "./planScale";
import { roofInWords } from "./roofInWords";
import { element, pointList, svgPicture } from "./svg";
import { wallLines } from "./wallLines";

const BELOW_LEGEND_PX = 20;

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
      ...edges.flatMap((edge) => edgeLabel(edge, scale)),
      ...planes.map((plane) => planeLabel(plane, scale)),
      ...planLegend(edges, scale.height),
    ],
  });
};
