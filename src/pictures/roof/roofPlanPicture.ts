import type { Roof } from "../../../functions/roof/roofParts";
import type { PictureOptions } from "../pictureOptions";
import { edgeLabel, edgeLine } from "./edgeLines";
import { planeClass } from "./roofStyle";
import { legendHeight, planLegend } from "./planLegend";
import { planeLabel } from "./planeLabel";
import { planScale } from "./planScale";
import { roofSvg } from "./roofSvg";
import { describeRoof } from "./describeRoof";
import { element } from "../svg";
import { svgPoints } from "../picturePoint";
import { wallLines } from "./wallLines";

const BELOW_LEGEND_PX = 20;

/** The roof plan: numbered planes, pitch arrows down the slope, and edges by kind with their true lengths. */
export const roofPlanPicture = (roof: Roof, options: PictureOptions): string => {
  const { planes, edges } = roof;
  const scale = planScale(planes.flatMap(({ corners }) => corners));
  return roofSvg(options, {
    width: scale.width,
    height: scale.height + legendHeight(edges) + BELOW_LEGEND_PX,
    description: describeRoof(roof),
    content: [
      ...planes.map(({ corners }) =>
        element("polygon", { class: planeClass(0), points: svgPoints(corners.map(scale.toPixel)) }),
      ),
      ...wallLines(roof, scale),
      ...edges.map((edge) => edgeLine(edge, scale)),
      ...edges.flatMap((edge) => edgeLabel(edge, scale)),
      ...planes.map((plane) => planeLabel(plane, scale)),
      ...planLegend(edges, scale.height),
    ],
  });
};
