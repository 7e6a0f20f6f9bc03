import { orderSheet } from "../orderSheet/orderSheet";
import { panelSheet } from "../panelSheet";
import { text, type PlannedCell, type WorkbookPlan } from "../../workbook/plan";
import { roofSheet } from "../roofSheet/roofSheet";
import { rowHeightsOf } from "../../workbook/rowHeights";
import { cautionCells } from "../cautionCells";
import { cutsSheet } from "../takeoff/cutsSheet";
import { trimsSheet } from "../takeoff/trimsSheet";
import { checkSection } from "../takeoff/takeoffChecks";
import { courseSection } from "../takeoff/courseSection";
import { deckSection } from "../takeoff/deckSection";
import { layOutTakeoff } from "../takeoff/takeoffLayout";
import type { TakeoffOptions } from "../takeoff/takeoffOptions";
import { penetrationSection } from "../takeoff/penetrationSection";
import { planeSection } from "../takeoff/planeSection";
import { starterSection } from "../takeoff/starterSection";
import { runSection } from "../takeoff/runSection";
import { trimSection } from "../takeoff/trimSection";

/** The names of the new sheets: the usual ones, or others if those are taken. */
export interface TakeoffSheetNames {
  readonly takeoff: string;
  readonly order: string;
  readonly cuts: string;
  /** undefined: the workbook already has a panel sheet, which the takeoff uses. */
  readonly panel: string | undefined;
  /** undefined: the workbook already has a Trims sheet. */
  readonly trims: string | undefined;
  readonly roof: string;
}

export const USUAL_NAMES = {
  takeoff: "Takeoff",
  order: "Order",
  cuts: "Trim cuts",
  trims: "Trims",
  panel: "Panel",
  roof: "Roof",
} as const;

const COLUMN_WIDTHS = [110, 110, 66, 84, 84, 62, 110, 80, 60, 70, 76, 66, 470];

const head = ({ job, notes }: TakeoffOptions): PlannedCell[] => [
  {
    row: 0,
    column: 0,
    content: text(job === "" ? "Roof takeoff" : `Roof takeoff: ${job}`),
    style: "title",
  },
  {
    row: 1,
    column: 0,
    content: text(
      "Type in the shaded cells: lengths in feet, or tape text such as 18' 6 1/2\"; a pitch as 6 or 6 in 12. Courses and panels need the shingle's dimensions on the panel sheet. Everything else is calculated.",
    ),
    style: "note",
  },
  ...notes.map((note, index): PlannedCell => ({
    row: 2 + index,
    column: 0,
    content: text(note),
    style: "note",
  })),
];

/** A takeoff: area, courses, starters, trim, fasteners and packs from measured planes or a footprint. */
export const takeoffPlan = (options: TakeoffOptions, sheetNames: TakeoffSheetNames): WorkbookPlan => {
  const layout = layOutTakeoff(options);
  const panel = sheetNames.panel === undefined ? undefined : panelSheet(sheetNames.panel, options.panel);
  const trims = sheetNames.trims === undefined ? undefined : trimsSheet(sheetNames.trims, options.trims);
  const front = options.roof && roofSheet(sheetNames.roof, options.roof);
  const sections: PlannedCell[] = [
    ...head(options),
    ...planeSection(layout, options.planes),
    ...courseSection(layout),
    ...penetrationSection(layout, options.penetrations),
    ...runSection(layout, options.runs),
    ...trimSection(layout),
    ...deckSection(layout, options.deck),
    ...starterSection(layout, options.planes),
    ...cautionCells(layout.cautions),
  ];
  const cells = [...sections, ...checkSection(layout, sections)];
  const takeoff = {
    name: sheetNames.takeoff,
    print: "one page wide, landscape" as const,
    frozenRows: 1,
    columnWidths: COLUMN_WIDTHS,
    rowHeights: rowHeightsOf(cells),
    cells,
  };
  const parts = [front, trims, panel].filter((part) => part !== undefined);
  return {
    sheets: [
      ...(front ? [front.sheet] : []),
      takeoff,
      orderSheet(sheetNames.order, sheetNames.takeoff, layout, options),
      cutsSheet(sheetNames.cuts, sheetNames.takeoff, layout),
      ...(trims ? [trims.sheet] : []),
      ...(panel ? [panel.sheet] : []),
    ],
    names: parts.flatMap(({ names }) => names),
  };
};
