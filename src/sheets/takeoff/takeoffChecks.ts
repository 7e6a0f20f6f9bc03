import { TRIM_EDGES, type TrimEdge } from "../../../shared/trimKinds";
import { a1, areaAddress } from "../../workbook/address";
import { contiguousAreas } from "../../workbook/contiguousAreas";
import { panelFieldName } from "../panelSheet";
import { formula, type PlannedCell } from "../../workbook/plan";
import { TRIM_ROWS, TRIMS_NAME } from "./trimsSheet";
import { CHECK_ROWS, type TakeoffLayout } from "./takeoffLayout";
import { penetrationColumn } from "./penetrationSection";
import { planeColumn } from "./planeSection";
import { roofEdgesWithoutTrim } from "./roofFormulas";
import { hasLength, runColumn } from "./runSection";
import { rowsFrom } from "./sectionHead";
import { trimColumn } from "./trimTable";

/** `3 runs take`, `1 run takes`: a count in a sentence, as a formula. */
const counted = (count: string, one: string, several: string): string =>
  `IF(${count}=1,"1 ${one}",${count}&" ${several}")`;

const warn = (count: string, sentence: string): string => `IF(${count}=0,"",${sentence})`;

/** Warns of runs that no trim follows. */
const runsWithoutTrim = (layout: TakeoffLayout): string => {
  const follows = trimColumn(layout, "follows");
  const byHand = `SUMPRODUCT(ISNA(MATCH(${runColumn(layout, "edge")},${follows},0))*${hasLength(runColumn(layout, "length"))})`;
  const count = layout.roofRows > 0 ? `(${byHand}+${roofEdgesWithoutTrim(follows)})` : byHand;
  return warn(
    count,
    `${counted(count, "run has", "runs have")}&" no trim: check the edge, or add a trim that follows it on the Trims sheet"`,
  );
};

/** Planes measured by hand meet at edges that only the user can type. */
const noRidge = (layout: TakeoffLayout): string => {
  const isRidge = (["ridge", "hip"] satisfies TrimEdge[])
    .map((edge) => `(${runColumn(layout, "edge")}="${edge}")`)
    .join("+");
  const ridges = `SUMPRODUCT((${isRidge})*${hasLength(runColumn(layout, "length"))})`;
  const firstHandRow = layout.planes + layout.roofRows;
  const handPlanes = `COUNT(${planeColumn(layout, "slopeUsed", firstHandRow)})`;
  return `IF(AND(${handPlanes}>0,${ridges}=0),"planes are measured by hand, but no ridge or hip has a length: type all edges","")`;
};

/** Warns of filled rows that are neither a chimney nor a pipe. */
const neitherChimneyNorPipe = (layout: TakeoffLayout): string => {
  const isFilled = (["name", "kind", "width", "depth", "pitch"] as const)
    .map((column) => `(LEN(${penetrationColumn(layout, column)})>0)`)
    .join("+");
  const kind = penetrationColumn(layout, "kind");
  const count = `SUMPRODUCT(((${isFilled})>0)*(${kind}<>"chimney")*(${kind}<>"pipe"))`;
  return warn(
    count,
    `${counted(count, "row", "rows")}&" of chimneys and pipes not counted: choose chimney or pipe"`,
  );
};

/** Warns of trims that follow an edge that is neither a known kind nor the edge of a run: they would have no length. */
const trimsWithoutEdge = (layout: TakeoffLayout): string => {
  const [labels, follows] = [trimColumn(layout, "label"), trimColumn(layout, "follows")];
  const known = `ISNUMBER(MATCH(${follows},{${TRIM_EDGES.map((edge) => `"${edge}"`).join(",")}},0))`;
  const borne = `ISNUMBER(MATCH(${follows},${runColumn(layout, "edge")},0))`;
  const count = `SUMPRODUCT((LEN(${labels})>0)*IF(LEN(${follows})=0,1,(${known}+${borne}=0)*1))`;
  return warn(
    count,
    counted(count, "trim follows no edge and is not ordered", "trims follow no edge and are not ordered"),
  );
};

/** Warns of rows inserted into the Trims sheet. */
const trimRowsUnread = `IF(ROWS(${TRIMS_NAME})=${TRIM_ROWS},"","the Trims sheet has "&ROWS(${TRIMS_NAME})&" rows, but only ${TRIM_ROWS} are used")`;

const clips = panelFieldName("clipsPerPanel");
const noClips = (layout: TakeoffLayout): string =>
  `IF(AND(COUNT(${planeColumn(layout, "area")})>0,${clips}=0),"clips per panel is 0 on the panel sheet: no clips are ordered","")`;

/** Warns of formulas that were overwritten: their cells no longer follow the roof. */
const typedOver = (sections: readonly PlannedCell[]): string => {
  const calculated = contiguousAreas(sections.filter(({ content }) => content?.kind === "formula"));
  const count = calculated.map((block) => `SUMPRODUCT(1-ISFORMULA(${areaAddress(block)}))`).join("+");
  return warn(`(${count})`, `"formulas overwritten: "&(${count})&"; these cells no longer update"`);
};

const checksOf = (layout: TakeoffLayout, sections: readonly PlannedCell[]): readonly string[] => [
  runsWithoutTrim(layout),
  noRidge(layout),
  neitherChimneyNorPipe(layout),
  trimsWithoutEdge(layout),
  trimRowsUnread,
  noClips(layout),
  typedOver(sections),
];

/** The cells with the warnings. */
export const checkCells = (layout: TakeoffLayout): readonly string[] =>
  rowsFrom(layout.checks, CHECK_ROWS).map((row) => a1({ row, column: 0 }));

/** Warnings of what may be missing or wrong, below the trim section. Blank if nothing is. */
export const checkSection = (layout: TakeoffLayout, sections: readonly PlannedCell[]): PlannedCell[] =>
  checksOf(layout, sections).map((check, index) => ({
    row: layout.checks + index,
    column: 0,
    content: formula(`=${check}`),
    style: "caution",
  }));
