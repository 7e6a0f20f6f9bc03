import { edgeLengthsSpec } from "../../../functions/roof/edgeLengths";
import { planeOutlineSpec } from "../../../functions/roof/planeOutline";
import { roofEdgesSpec } from "../../../functions/roof/roofEdges";
import { EDGE_KINDS } from "../../../functions/roof/roofParts";
import { roofPlanesSpec } from "../../../functions/roof/roofPlanes";
import type { FunctionSpec } from "../../../shared/spec/spec";
import { call } from "../../workbook/formula";
import {
  FOOTPRINT_AND_PITCH,
  GABLES_AND_OVERHANGS,
  ROOF_ARGUMENTS,
  ROOF_NAMES,
} from "../roofSheet/roofSheetNames";

// The takeoff works the roof out where it needs it, and doesn't read the tables that spill on the roof sheet: the local
// workbook's engine may keep cells of a spill that has shrunk, and a sum over them would then be wrong in silence.
const PLANES = call(roofPlanesSpec, ...ROOF_ARGUMENTS, "", "FALSE");
const EDGES = call(roofEdgesSpec, ...ROOF_ARGUMENTS, "FALSE");

const NO_FOOTPRINT = `COUNTA(${ROOF_NAMES.footprint})=0`;

const columnOf = ({ columns }: FunctionSpec, heading: string): number =>
  (columns ?? []).findIndex((column) => column.heading === heading) + 1;

const edgeColumn = (heading: string): string => `INDEX(${EDGES},0,${columnOf(roofEdgesSpec, heading)})`;

/** What stands for a plane of the roof, or empty text where the roof has fewer planes. */
export const ifRoofHasPlane = (plane: number, then: string): string =>
  `=IF(${NO_FOOTPRINT},"",IF(ROWS(${PLANES})<${plane},"",${then}))`;

/** A value from the roof's table of planes. */
export const roofPlaneValue = (plane: number, heading: string): string =>
  `INDEX(${PLANES},${plane},${columnOf(roofPlanesSpec, heading)})`;

/** The corners of a plane, for LAYOUT and its kin. */
export const roofPlaneOutline = (plane: number): string =>
  call(planeOutlineSpec, ...FOOTPRINT_AND_PITCH, String(plane), ...GABLES_AND_OVERHANGS);

/** Gable edges of a plane: its rakes. */
export const roofPlaneRakes = (plane: number): string =>
  `SUMPRODUCT((${edgeColumn("kind")}="rake")*(${edgeColumn("plane")}=${plane}))`;

/** An edge as the roof's functions call it: what a gable edge takes, a rake takes. */
const roofEdge = (edge: string): string => `SUBSTITUTE(${edge},"gable","rake")`;

const isOfRoof = (edge: string): string =>
  `OR(${roofEdge(edge)}={${EDGE_KINDS.map((kind) => `"${kind}"`).join(",")}})`;

const ifOfRoof = (edge: string, then: string, otherwise: string): string =>
  `IF(${NO_FOOTPRINT},${otherwise},IF(${isOfRoof(edge)},${then},${otherwise}))`;

/** The lengths of the roof's own edges of one kind, a column; 0 where there are none. */
export const roofEdgeLengths = (edge: string): string =>
  ifOfRoof(
    edge,
    call(edgeLengthsSpec, ...FOOTPRINT_AND_PITCH, roofEdge(edge), ...GABLES_AND_OVERHANGS, "FALSE"),
    "0",
  );

/** What they are called, in the same order. */
export const roofEdgeNames = (edge: string): string => {
  const kinds = edgeColumn("kind");
  const names = `"plane "&${edgeColumn("plane")}&" "&${kinds}`;
  return ifOfRoof(edge, `IFERROR(FILTER(${names},${kinds}=${roofEdge(edge)}),"")`, `""`);
};

/** How many of the roof's edges none of these trims follows. */
export const roofEdgesWithoutTrim = (follows: string): string =>
  `IF(${NO_FOOTPRINT},0,SUMPRODUCT(ISNA(MATCH(SUBSTITUTE(${edgeColumn("kind")},"rake","gable"),${follows},0))*1))`;

/** Says when the roof has planes that the takeoff has no rows for. */
export const missingPlanesWarning = (rows: number): string =>
  `=IF(${NO_FOOTPRINT},"",IF(ROWS(${PLANES})>${rows},"the roof has more planes than rows here: build a larger takeoff",""))`;
