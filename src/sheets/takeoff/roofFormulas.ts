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

// The takeoff calculates the roof where it needs it instead of reading the tables that spill on the roof sheet. The local
// workbook's engine may keep old cells of a spill that has shrunk, and a sum over them would be wrong without a warning.
const PLANES = call(roofPlanesSpec, ...ROOF_ARGUMENTS, "", "FALSE");
const EDGES = call(roofEdgesSpec, ...ROOF_ARGUMENTS, "FALSE");

const NO_FOOTPRINT = `COUNTA(${ROOF_NAMES.footprint})=0`;

const columnOf = ({ columns }: FunctionSpec, heading: string): number =>
  (columns ?? []).findIndex((column) => column.heading === heading) + 1;

const edgeColumn = (heading: string): string => `INDEX(${EDGES},0,${columnOf(roofEdgesSpec, heading)})`;

/** `then`, or empty text if the roof has fewer planes than this. */
export const ifRoofHasPlane = (plane: number, then: string): string =>
  `=IF(${NO_FOOTPRINT},"",IF(ROWS(${PLANES})<${plane},"",${then}))`;

/** A value from the roof's table of planes. */
export const roofPlaneValue = (plane: number, heading: string): string =>
  `INDEX(${PLANES},${plane},${columnOf(roofPlanesSpec, heading)})`;

/** The corners of a roof plane, for LAYOUT and similar functions. */
export const roofPlaneOutline = (plane: number): string =>
  call(planeOutlineSpec, ...FOOTPRINT_AND_PITCH, String(plane), ...GABLES_AND_OVERHANGS);

/** The number of rakes of a roof plane: its gable edges. */
export const roofPlaneRakes = (plane: number): string =>
  `SUMPRODUCT((${edgeColumn("kind")}="rake")*(${edgeColumn("plane")}=${plane}))`;

/** An edge kind as the roof functions call it: "gable" is "rake". */
const roofEdgeKind = (edge: string): string => `SUBSTITUTE(${edge},"gable","rake")`;

const isRoofEdge = (edge: string): string =>
  `OR(${roofEdgeKind(edge)}={${EDGE_KINDS.map((kind) => `"${kind}"`).join(",")}})`;

const ifRoofEdge = (edge: string, then: string, otherwise: string): string =>
  `IF(${NO_FOOTPRINT},${otherwise},IF(${isRoofEdge(edge)},${then},${otherwise}))`;

/** The lengths of the roof's edges of one kind, as a column; 0 if there are none. */
export const roofEdgeLengths = (edge: string): string =>
  ifRoofEdge(
    edge,
    call(edgeLengthsSpec, ...FOOTPRINT_AND_PITCH, roofEdgeKind(edge), ...GABLES_AND_OVERHANGS, "FALSE"),
    "0",
  );

/** The names of the roof's edges of one kind, in the same order. */
export const roofEdgeNames = (edge: string): string => {
  const kinds = edgeColumn("kind");
  const names = `"plane "&${edgeColumn("plane")}&" "&${kinds}`;
  return ifRoofEdge(edge, `IFERROR(FILTER(${names},${kinds}=${roofEdgeKind(edge)}),"")`, `""`);
};

/** How many of the roof's edges no trim follows. */
export const roofEdgesWithoutTrim = (follows: string): string =>
  `IF(${NO_FOOTPRINT},0,SUMPRODUCT(ISNA(MATCH(SUBSTITUTE(${edgeColumn("kind")},"rake","gable"),${follows},0))*1))`;

/** Warns if the roof has more planes than the takeoff has rows. */
export const missingPlanesWarning = (rows: number): string =>
  `=IF(${NO_FOOTPRINT},"",IF(ROWS(${PLANES})>${rows},"the roof has more planes than rows here: build a larger takeoff",""))`;
