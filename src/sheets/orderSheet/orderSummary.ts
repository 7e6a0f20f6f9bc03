import { packsSpec } from "../../../functions/orders/packs";
import { a1, sheetPrefix } from "../../workbook/address";
import { call, isEmpty } from "../../workbook/formula";
import { formula, text, type CellContent, type PlannedCell } from "../../workbook/plan";
import { panelFieldName } from "../panelSheet";
import { planeTotalCell } from "../takeoff/planeSection";
import type { TakeoffLayout } from "../takeoff/takeoffLayout";
import { FIRST_ORDER_ROW, ORDER, orderCell, type OrderColumn } from "./orderLayout";
import { MONEY, type PlacedGroup } from "./orderRows";
import { itemsWithout } from "./orderWarnings";

/** Letters of item names that fit before the totals' labels. */
const NAMES_SHOWN = 50;

interface Summary {
  readonly label: string;
  readonly content: string;
  readonly numberFormat: string;
  readonly note: CellContent;
}

export const summaries = (
  layout: TakeoffLayout,
  takeoffSheet: string,
  groups: readonly PlacedGroup[],
  lastRow: number,
  firstSummaryRow: number,
): readonly Summary[] => {
  const overGroups = (column: "weight" | "extended"): string =>
    groups.map(({ row }) => orderCell(row, column)).join("+");
  const area = `${sheetPrefix(takeoffSheet)}${planeTotalCell(layout, "area")}`;
  const packsOfPanels = orderCell(FIRST_ORDER_ROW + 1, "toOrder");
  const perPallet = panelFieldName("packsPerPallet");
  const weightRow = firstSummaryRow + 1;
  const weight = a1({ row: weightRow, column: ORDER.extended });
  const without = (column: "weight" | "extended", what: string, row: number): CellContent => {
    const items = itemsWithout(lastRow, column);
    const named = `IF(LEN(${items})>${NAMES_SHOWN},LEFT(${items},${NAMES_SHOWN})&"...",${items})`;
    const counted = `IF(LEN(${items})=0,"every line that is ordered has a ${what}","ordered without a ${what}, and not in the total: "&${named})`;
    return formula(
      `=IF(ISERROR(${a1({ row, column: ORDER.extended })}),"a line is an error, and so is the total",${counted})`,
    );
  };
  return [
    {
      label: "Total, before tax",
      content: `=${overGroups("extended")}`,
      numberFormat: MONEY,
      note: without("extended", "price", firstSummaryRow),
    },
    {
      label: "Weight of all (lb)",
      content: `=${overGroups("weight")}`,
      numberFormat: "#,##0",
      note: without("weight", "weight", weightRow),
    },
    {
      label: "Weight on the deck (lb per sq ft)",
      content: `=IF(${area}=0,"",${weight}/${area})`,
      numberFormat: "0.00",
      note: text("spread evenly, not stacked; whether the deck carries it is for a licensed professional"),
    },
    {
      label: "Pallets of panels",
      content: `=IF(OR(${perPallet}=0,${isEmpty(packsOfPanels)}),"",${call(packsSpec, packsOfPanels, perPallet)})`,
      numberFormat: "#,##0",
      note: formula(`=IF(${perPallet}=0,"the panel sheet doesn't say how many packs a pallet holds","")`),
    },
  ];
};

const SUMMARY_LABEL: OrderColumn = "weightEach";

export const summaryCells = (row: number, { label, content, numberFormat, note }: Summary): PlannedCell[] => [
  { row, column: ORDER[SUMMARY_LABEL], content: text(label), style: "label" },
  { row, column: ORDER.extended, content: formula(content), style: "total", numberFormat },
  { row, column: ORDER.item, content: note, style: "note" },
];
