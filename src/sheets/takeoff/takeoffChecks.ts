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

/** Runs whose edge no trim follows. */
const runsWithoutTrim = (layout: TakeoffLayout): string => {
  const follows = trimColumn(layout, "follows");
  const byHand = `SUMPRODUCT(ISNA(MATCH(${runColumn(layout, "edge")},${follows},0))*${hasLength(runColumn(layout, "length"))})`;
  const count = layout.roofRows > 0 ? `(${byHand}+${roofEdgesWithoutTrim(follows)})` : byHand;
  return warn(
    count,
    `${counted(count, "run takes", "runs take")}&" no trim: check the edge, or let a trim of the Trims sheet follow it"`,
  );
};

/** Planes measured by hand have edges where they meet, and nothing else tells of them. */
const noRidge = (layout: TakeoffLayout): string => {
  const isRidge = (["ridge", "hip"] satisfies TrimEdge[])
    .map((edge) => `(${runColumn(layout, "edge")}="${edge}")`)
    .join("+");
  const ridges = `SUMPRODUCT((${isRidge})*${hasLength(runColumn(layout, "length"))})`;
  const firstHandRow = layout.planes + layout.roofRows;
  const handPlanes = `COUNT(${planeColumn(layout, "slopeUsed", firstHandRow)})`;
  return `IF(AND(${handPlanes}>0,${ridges}=0),"planes are measured by hand, and no ridge or hip has a length: are all edges typed?","")`;
};

/** Rows of chimneys and pipes that are filled and are neither. */
const neitherChimneyNorPipe = (layout: TakeoffLayout): string => {
  const isFilled = (["name", "kind", "width", "depth", "pitch"] as const)
    .map((column) => `(LEN(${penetrationColumn(layout, column)})>0)`)
    .join("+");
  const kind = penetrationColumn(layout, "kind");
  const count = `SUMPRODUCT(((${isFilled})>0)*(${kind}<>"chimney")*(${kind}<>"pipe"))`;
  return warn(
    count,
    `${counted(count, "row", "rows")}&" of chimneys and pipes say neither, and are not counted"`,
  );
};

/** Trims whose edge is none that a roof has, nor one that a run bears: they would come to nothing. */
const trimsWithoutEdge = (layout: TakeoffLayout): string => {
  const [labels, follows] = [trimColumn(layout, "label"), trimColumn(layout, "follows")];
  const known = `ISNUMBER(MATCH(${follows},{${TRIM_EDGES.map((edge) => `"${edge}"`).join(",")}},0))`;
  const borne = `ISNUMBER(MATCH(${follows},${runColumn(layout, "edge")},0))`;
  const count = `SUMPRODUCT((LEN(${labels})>0)*IF(LEN(${follows})=0,1,(${known}+${borne}=0)*1))`;
  return warn(
    count,
    counted(count, "trim follows no edge, and comes to nothing", "trims follow no edge, and come to nothing"),
  );
};

/** A row that was inserted is read by nobody. */
const trimRowsUnread = `IF(ROWS(${TRIMS_NAME})=${TRIM_ROWS},"","the table of trims has "&ROWS(${TRIMS_NAME})&" rows, and ${TRIM_ROWS} are read")`;

const clips = panelFieldName("clipsPerPanel");
const noClips = (layout: TakeoffLayout): string =>
  `IF(AND(COUNT(${planeColumn(layout, "area")})>0,${clips}=0),"the panel sheet gives no clips per panel: none are ordered","")`;

/** A number that is typed where the sheet works one out follows the roof no longer. */
const typedOver = (sections: readonly PlannedCell[]): string => {
  const worked = contiguousAreas(sections.filter(({ content }) => content?.kind === "formula"));
  const count = worked.map((block) => `SUMPRODUCT(1-ISFORMULA(${areaAddress(block)}))`).join("+");
  return warn(
    `(${count})`,
    `"cells that are worked out, and were typed over: "&(${count})&"; they follow no change"`,
  );
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

/** The cells that say what may have been forgotten. */
export const checkCells = (layout: TakeoffLayout): readonly string[] =>
  rowsFrom(layout.checks, CHECK_ROWS).map((row) => a1({ row, column: 0 }));

/** What may have been forgotten: quiet where nothing was. */
export const checkSection = (layout: TakeoffLayout, sections: readonly PlannedCell[]): PlannedCell[] =>
  checksOf(layout, sections).map((check, index) => ({
    row: layout.checks + index,
    column: 0,
    content: formula(`=${check}`),
    style: "caution",
  }));
