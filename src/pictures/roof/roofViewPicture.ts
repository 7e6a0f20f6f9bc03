import type { Roof } from "../../../functions/roof/roofParts";
import type { RoofPoint } from "../../../functions/roof/skeleton/planVectors";
import type { PictureOptions } from "../pictureOptions";
import { edgeClass } from "./roofStyle";
import { numberBadge } from "./planeLabel";
import { planScale, type PlanScale } from "./planScale";
import { roofSvg } from "./roofSvg";
import { describeRoof } from "./describeRoof";
import { element } from "../svg";
import { svgPoints } from "../picturePoint";
import { viewFaces } from "./viewFaces";
import { visibleLabels } from "./viewLabels";
import { facesViewer, project, type ProjectedPoint } from "./projection";
import { sliceDepths, slice } from "./depthSlices";

const LAYERS = ["wall", "plane", "line"] as const;
type Layer = (typeof LAYERS)[number];

/** A face or an edge as the viewer sees it. */
interface DrawnPart {
  readonly points: readonly ProjectedPoint[];
  readonly className: string;
  /** The order within one slice: the viewer looks down, so a plane hides the wall below it. Lines come last. */
  readonly layer: Layer;
}

const meanDepth = (points: readonly ProjectedPoint[]): number =>
  points.reduce((sum, { depth }) => sum + depth, 0) / points.length;

/** The faces that are turned to the viewer, and the edges of the planes among them. */
const drawnParts = (roof: Roof, turnDegrees: number): DrawnPart[] => {
  const projected = (corners: readonly RoofPoint[]): ProjectedPoint[] =>
    corners.map((corner) => project(corner, turnDegrees));
  const faces = viewFaces(roof)
    .map(({ corners, className, isWall }): DrawnPart => ({
      points: projected(corners),
      className,
      layer: isWall ? "wall" : "plane",
    }))
    .filter(({ points }) => facesViewer(points));
  const seen = new Set(roof.planes.filter(({ corners }) => facesViewer(projected(corners))));
  const lines = roof.edges
    .filter(({ plane, otherPlane }) => seen.has(plane) || (otherPlane && seen.has(otherPlane)))
    .map(({ kind, from, to }): DrawnPart => ({
      points: projected([from, to]),
      className: `roof-view-edge ${edgeClass(kind)}`,
      layer: "line",
    }));
  return [...faces, ...lines];
};

const markup = ({ points, className, layer }: DrawnPart, { toPixel }: PlanScale): string =>
  element(layer === "line" ? "polyline" : "polygon", {
    class: className,
    points: svgPoints(points.map(toPixel)),
  });

/**
 * The roof on its walls, seen from above one side and turned. Everything is cut at the depths where anything begins
 * or ends, then painted from the farthest slice to the nearest, so that near parts hide those behind them.
 */
export const roofViewPicture = (roof: Roof, turnDegrees: number, options: PictureOptions): string => {
  const parts = drawnParts(roof, turnDegrees);
  const points = parts.flatMap((part) => part.points);
  const scale = planScale(points);
  const depths = sliceDepths(points);
  const painted = depths.slice(1).flatMap((near, index) =>
    parts
      .map((part) => ({ ...part, points: slice(part.points, near, depths[index] as number) }))
      .filter((part) => part.points.length > (part.layer === "line" ? 1 : 2))
      .sort(
        (a, b) =>
          LAYERS.indexOf(a.layer) - LAYERS.indexOf(b.layer) || meanDepth(b.points) - meanDepth(a.points),
      )
      .map((part) => markup(part, scale)),
  );
  const labels = visibleLabels(roof, turnDegrees).map(({ plane, point }) =>
    numberBadge(plane.number, scale.toPixel(project(point, turnDegrees))),
  );
  return roofSvg(options, {
    width: scale.width,
    height: scale.height,
    description: `Seen from above, turned ${Math.round(turnDegrees)} degrees. ${describeRoof(roof)}`,
    content: [...painted, ...labels],
  });
};
