import { noAnswer } from "../../shared/inputError";
import { twiceSignedArea } from "../../shared/outline";
import { sidesThatCross } from "../../shared/outlineCrossing";
import { distanceToSegment } from "../../shared/segment";
import { planAreaSqFt } from "./roofMeasures";
import type { Roof, RoofEdge, RoofPlane } from "./roofParts";
import { distance, type RoofPoint } from "./skeleton/planVectors";
import { planeHeight } from "./skeleton/roofSide";

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
const areaOf = (corners: readonly RoofPoint[]): number => twiceSignedArea(corners) / 2;

const rejectPlane = ({ side }: RoofPlane, reason: string): never => {
  throw noAnswer(`the plane of side ${side.number} ${reason}`);
};

/** Checks that a plane is flat, faces up, and does not cross itself. */
const checkPlane = (plane: RoofPlane, toleranceFt: number): void => {
  const { side } = plane;
  const offFt = Math.max(...plane.corners.map((corner) => Math.abs(planeHeight(side, corner) - corner.z)));
  if (!(offFt <= toleranceFt * Math.max(1, side.pitch))) rejectPlane(plane, "does not meet its neighbors");
  if (!(planAreaSqFt(plane) > 0)) rejectPlane(plane, "comes to nothing between its neighbors");
  const crossing = sidesThatCross(plane.corners);
  if (crossing) rejectPlane(plane, "crosses itself");
};

/** An edge with one plane that isn't part of the outer edge: the planes on its two sides don't meet there. */
const looseEdge = ({ edges, outerEdges }: Roof, toleranceFt: number): RoofEdge | undefined => {
  const pieces = outerEdges.flat();
  return edges.find(({ from, to, otherPlane }) => {
    const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
    return (
      !otherPlane && !pieces.some((piece) => distanceToSegment(middle, piece.from, piece.to) <= toleranceFt)
    );
  });
};

/**
 * Checks a roof before it is returned. The planes share nodes, so heights agree along every arc once each plane is flat.
 * If all planes pass, their plan areas add up to the footprint with overhangs, and the edges with one plane add up to
 * its outline, then no two planes overlap and no wall is left between them.
 */
export const checkRoof = (roof: Roof, toleranceFt: number): void => {
  const { planes, edges, outerEdges } = roof;
  for (const plane of planes) checkPlane(plane, toleranceFt);
  const loose = looseEdge(roof, toleranceFt);
  if (loose)
    throw noAnswer(
      `the plane of side ${loose.plane.side.number} would end in mid-roof, with a wall above or below it`,
    );
  const outlineFt = sum(outerEdges.flat().map(({ from, to }) => distance(from, to)));
  const coveredFt = sum(
    edges.filter(({ otherPlane }) => !otherPlane).map(({ from, to }) => distance(from, to)),
  );
  const areaSqFt = sum(outerEdges.map((ring) => areaOf(ring.map(({ from }) => from))));
  const coveredSqFt = sum(planes.map(planAreaSqFt));
  const isCovered =
    Math.abs(coveredSqFt - areaSqFt) <= toleranceFt * outlineFt &&
    Math.abs(coveredFt - outlineFt) <= toleranceFt * edges.length;
  if (!isCovered)
    throw noAnswer(
      `the planes of sides ${planes.map(({ side }) => side.number).join(", ")} don't cover the footprint once`,
    );
};
