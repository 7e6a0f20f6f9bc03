import { packsSpec } from "../../../functions/orders/packs";
import { squaresSpec } from "../../../functions/orders/squares";
import { SQ_FT_PER_SQUARE } from "../../../shared/units";
import { a1 } from "../address";
import { call, isEmpty, unlessEmpty } from "../formula";
import { panelFieldName } from "../panelSheet";
import { formula, number, text, type PlannedCell } from "../plan";
import type { TakeOffLayout } from "./layout";
import { PLANE } from "./planes";
import { sectionHead } from "./section";
import { trimTotalCell } from "./trim";

const HEADINGS = ["Item", "Needed", "Unit", "Per pack", "To order", "Unit", "Waste"];
const [ITEM, NEEDED, UNIT, PER_PACK, TO_ORDER, ORDER_UNIT, WASTE] = [0, 1, 2, 3, 4, 5, 6];

interface OrderLine {
  readonly item: string;
  readonly needed: string;
  readonly unit: string;
  /** A formula without "=", or a number that a person may change. */
  readonly perPack: string | number;
  readonly orderUnit: string;
}

/** Whole panels for the area and the waste allowed beside it; quiet until there is an area. */
const panelsNeeded = (layout: TakeOffLayout, wasteCell: string): string => {
  const area = a1({ row: layout.planeTotal, column: PLANE.area });
  const panelSqFt = `${panelFieldName("exposedWidthIn")}*${panelFieldName("exposedHeightIn")}/144`;
  return `IF(${area}=0,"",${call(packsSpec, `${call(squaresSpec, area, wasteCell)}*${SQ_FT_PER_SQUARE}`, panelSqFt)})`;
};

const orderLines = (layout: TakeOffLayout): readonly OrderLine[] => {
  const panels = a1({ row: layout.order, column: NEEDED });
  const wasteCell = a1({ row: layout.order, column: WASTE });
  const trimClips = `${trimTotalCell(layout, "gable", "clips")}+${trimTotalCell(layout, "ridge", "clips")}`;
  const pieces = (item: string, kind: "eave" | "gable" | "ridge"): OrderLine => ({
    item,
    needed: trimTotalCell(layout, kind, "pieces"),
    unit: "pieces",
    perPack: 1,
    orderUnit: "pieces",
  });
  return [
    {
      item: "Panels",
      needed: panelsNeeded(layout, wasteCell),
      unit: "panels",
      perPack: panelFieldName("panelsPerPack"),
      orderUnit: "packs",
    },
    pieces("Eave trim", "eave"),
    pieces("Gable trim", "gable"),
    pieces("Ridge trim", "ridge"),
    {
      item: "Panel clips",
      needed: `IF(${isEmpty(panels)},"",${panels}*${panelFieldName("clipsPerPanel")})`,
      unit: "clips",
      perPack: 100,
      orderUnit: "boxes",
    },
    { item: "Trim clips", needed: trimClips, unit: "clips", perPack: 100, orderUnit: "boxes" },
    {
      item: "Eave nails",
      needed: trimTotalCell(layout, "eave", "nails"),
      unit: "nails",
      perPack: 100,
      orderUnit: "boxes",
    },
  ];
};

const lineCells = (line: OrderLine, row: number): PlannedCell[] => {
  const [needed, perPack] = [a1({ row, column: NEEDED }), a1({ row, column: PER_PACK })];
  const isTyped = typeof line.perPack === "number";
  return [
    { row, column: ITEM, content: text(line.item), style: "label" },
    { row, column: NEEDED, content: formula(`=${line.needed}`), style: "result", numberFormat: "#,##0" },
    { row, column: UNIT, content: text(line.unit), style: "label" },
    {
      row,
      column: PER_PACK,
      content: typeof line.perPack === "number" ? number(line.perPack) : formula(`=${line.perPack}`),
      style: isTyped ? "input" : "result",
      numberFormat: "#,##0",
    },
    {
      row,
      column: TO_ORDER,
      content: formula(unlessEmpty(needed, call(packsSpec, needed, perPack))),
      style: "total",
      numberFormat: "#,##0",
    },
    { row, column: ORDER_UNIT, content: text(line.orderUnit), style: "label" },
  ];
};

/** What to buy, in whole packs; every quantity leads back to the tables above. */
export const orderSection = (layout: TakeOffLayout, waste: number): PlannedCell[] => [
  ...sectionHead(layout.order, "4  To order", HEADINGS),
  ...orderLines(layout).flatMap((line, index) => lineCells(line, layout.order + index)),
  { row: layout.order, column: WASTE, content: number(waste), style: "input", numberFormat: "0%" },
];
