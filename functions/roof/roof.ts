import type { Footprint } from "../../shared/footprint";
import { InputError, noAnswer } from "../../shared/inputError";
import { checkRoof } from "./roofChecks";
import { outerEdge, roofCorner, type EdgePiece } from "./eaves";
import { checkOverhangs } from "./overhangCheck";
import { planeCorners } from "./planeCorners";
import { classifyEdges } from "./classifyEdges";
import { roofGraph } from "./roofGraph";
import type { Roof, RoofPlane } from "./roofParts";
import { roofSides, type SideBuild } from "./roofSides";
import type { SkeletonArc } from "./skeleton/wavefront";
import { around } from "./skeleton/planVectors";
import { isGable, type RoofSide } from "./skeleton/roofSide";
import { straightSkeleton } from "./skeleton/straightSkeleton";
import { mergeCollinear } from "./mergeCollinear";

/** Relative to the size of the footprint: what counts as one point during the events, and among the finished nodes. */
const EVENT_TOLERANCE = 1e-10;
const NODE_TOLERANCE = 1e-7;

const sizeFt = (footprint: Footprint): number => {
  const corners = footprint.flat();
  const spread = (values: number[]): number => Math.max(...values) - Math.min(...values);
  return spread(corners.map(({ x }) => x)) + spread(corners.map(({ y }) => y));
};

const eaveJoints = (pieces: readonly EdgePiece[]): SkeletonArc[] =>
  pieces
    .filter(({ side }) => !isGable(side))
    .map(({ side, from, to }) => ({ left: side, right: undefined, from, to }));

const numbered = (sides: readonly RoofSide[]): RoofSide[] => [...sides].sort((a, b) => a.number - b.number);

const checkedRoof = (footprint: Footprint, builds: readonly SideBuild[]): Roof => {
  const size = sizeFt(footprint);
  const corners = roofSides(footprint, builds).map((ring) =>
    ring.map((side, index) => roofCorner(around(ring, index - 1), side)),
  );
  const outerEdges = corners.map(outerEdge);
  checkOverhangs(outerEdges);

  const loops = corners.map((ring) => ring.map(({ after, corner }) => ({ side: after, start: corner })));
  const sides = numbered(corners.flat().map(({ after }) => after));
  const highestEaveFt = Math.max(...sides.filter((side) => !isGable(side)).map((side) => side.eaveHeightFt));
  const { joints, unclosed } = straightSkeleton(loops, highestEaveFt, EVENT_TOLERANCE * size);
  const open = unclosed.flat().map(({ side }) => side.number);
  if (open.length > 0)
    throw noAnswer(`no plane closes the roof between sides ${[...new Set(open)].join(", ")}`);

  const toleranceFt = NODE_TOLERANCE * size;
  const { edges: pieces, planeOf } = roofGraph([...joints, ...outerEdges.flatMap(eaveJoints)], toleranceFt);
  const graphEdges = mergeCollinear(pieces, toleranceFt);
  const firsts = sides.filter((side) => !isGable(side) && planeOf(side) === side);
  const planes = firsts.map((side, index): RoofPlane => ({
    number: index + 1,
    side,
    sideNumbers: sides.filter((other) => planeOf(other) === side).map((other) => other.number),
    corners: planeCorners(graphEdges, side),
  }));
  const roof = { sides, planes, edges: classifyEdges(graphEdges, planes), outerEdges };
  checkRoof(roof, toleranceFt);
  return roof;
};

/** Finer than any tape. */
const SNAP_FT = 1 / 1024;

const snapped = (footprint: Footprint): Footprint =>
  footprint.map((ring) =>
    ring.map(({ x, y }) => ({ x: Math.round(x / SNAP_FT) * SNAP_FT, y: Math.round(y / SNAP_FT) * SNAP_FT })),
  );

/**
 * The roof over a footprint, or `#N/A` with the reason. Between sides that are out of parallel by a millionth of a
 * degree, a corner moves along the ridge faster than the arithmetic can follow. Where that spoils a roof, the corners
 * are rounded to the nearest 1/1024 ft and the roof is tried once more.
 */
export const roofOver = (footprint: Footprint, builds: readonly SideBuild[]): Roof => {
  try {
    return checkedRoof(footprint, builds);
  } catch (refusal) {
    if (!(refusal instanceof InputError)) throw refusal;
    try {
      return checkedRoof(snapped(footprint), builds);
    } catch {
      throw refusal;
    }
  }
};
