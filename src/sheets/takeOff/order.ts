import { packsSpec } from "../../../functions/orders/packs";
import { squaresSpec } from "../../../functions/orders/squares";
import { SQ_FT_PER_SQUARE } from "../../../shared/units";
import { a1 } from "../address";
import { call, isEmpty, unlessEmpty } from "../formula";
import { panelFieldName } from "../panelSheet";
import { formula, number, text, type PlannedCell } from "../plan";
import { panelsLaidCell, rollsCell } from "./courses";
import { RUN_KINDS, type TakeOffLayout, type RunKind } from "./layout";
import { sectionHead } from "./section";
import { trimTotalCell } from "./trim";

const HEADINGS = ["Item", "Needed", "Unit", "Per pack", "To order", "Unit", "Spare"];
const [ITEM, NEEDED, UNIT, PER_PACK, TO_ORDER, ORDER_UNIT, SPARE] = [0, 1, 2, 3, 4, 5, 6];

const CLIPPED = RUN_KINDS.filter((kind) => kind !== "eave");

interface OrderLine {
  readonly item: string;
  readonly needed: string;
  readonly unit: string;
  /** A formula without "=", or a number that a person may change. */
  readonly perPack: string | number;
  readonly orderUnit: string;
}

/**
 * Panels that the planes take when they are laid, and spare ones for the share beside them; quiet until there are any.
 * SQUARES takes hundredths with an allowance, and says what is wrong with one.
 */
const panelsNeeded = (layout: TakeOffLayout, spareCell: string): string => {
  const laid = panelsLaidCell(layout);
  return `IF(${laid}=0,"",${call(packsSpec, `${call(squaresSpec, laid, spareCell)}*${SQ_FT_PER_SQUARE}`, "1")})`;
};

const orderLines = (layout: TakeOffLayout): readonly OrderLine[] => {
  const panels = a1({ row: layout.order, column: NEEDED });
  const spareCell = a1({ row: layout.order, column: SPARE });
  const trimClips = CLIPPED.map((kind) => trimTotalCell(layout, kind, "clips")).join("+");
  const pieces = (item: string, kind: RunKind): OrderLine => ({
    item,
    needed: trimTotalCell(layout, kind, "pieces"),
    unit: "pieces",
    perPack: 1,
    orderUnit: "pieces",
  });
  return [
    {
      item: "Panels",
      needed: panelsNeeded(layout, spareCell),
      unit: "panels",
      perPack: panelFieldName("panelsPerPack"),
      orderUnit: "packs",
    },
    pieces("Eave trim", "eave"),
    pieces("Gable trim", "gable"),
    pieces("Ridge trim", "ridge"),
    pieces("Hip trim", "hip"),
    pieces("Valley trim", "valley"),
    pieces("Pitch break trim", "pitch break"),
    { item: "Underlayment", needed: rollsCell(layout), unit: "rolls", perPack: 1, orderUnit: "rolls" },
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
export const orderSection = (layout: TakeOffLayout, spare: number): PlannedCell[] => [
  ...sectionHead(layout.order, "4  To order", HEADINGS),
  ...orderLines(layout).flatMap((line, index) => lineCells(line, layout.order + index)),
  { row: layout.order, column: SPARE, content: number(spare), style: "input", numberFormat: "0%" },
];
