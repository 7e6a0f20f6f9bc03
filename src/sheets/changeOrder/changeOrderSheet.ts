import { cautionCells } from "../cautionCells";
import { formula, text, type PlannedCell, type SheetPlan } from "../../workbook/plan";
import { rowHeightsOf } from "../../workbook/rowHeights";
import { amountCells } from "./changeOrderAmounts";
import { checkFormula } from "./changeOrderChecks";
import type { ExistingChangeOrder } from "./existingChangeOrders";
import {
  AMOUNT_COLUMNS,
  CHANGE_COLUMNS,
  CHANGE_HEADINGS,
  CHECK_ROW,
  FIRST_LINE_ROW,
  causesRow,
  type ChangeColumn,
} from "./changeOrderLayout";
import { changeLines } from "./changeOrderLines";
import { firstSealRow, sealCells, sealedBlocksOf } from "./seals";
import { itemsOf, type Item, type RenamedItems, type ComparedOrder } from "./comparedOrders";
import { termCells } from "./changeOrderTerms";
import type { ItemCauses } from "./causes";
import { causeRows, type CauseRow } from "./causeRows";

export interface ChangeOrderOptions {
  readonly sheetName: string;
  readonly job: string;
  readonly dateSerial: number;
  readonly base: ComparedOrder;
  readonly now: ComparedOrder;
  /** What goes by another name than at base. */
  readonly renamed: RenamedItems;
  /** The change orders before this one. */
  readonly previous: readonly ExistingChangeOrder[];
  readonly causes: readonly ItemCauses[];
}

const SIGNATURE = "_".repeat(34);

const head = (
  { sheetName, job, base, now, previous }: ChangeOrderOptions,
  items: readonly Item[],
  sealsRow: number,
): PlannedCell[] => {
  const moves = now.sealed ? "" : ", which still moves: a draft until it is frozen";
  return [
    { row: 0, column: 0, content: text(job === "" ? sheetName : `${sheetName}: ${job}`), style: "title" },
    {
      row: 1,
      column: 0,
      content: text(`Base: "${base.order.sheet}". Now: "${now.order.sheet}"${moves}.`),
      style: "note",
    },
    {
      row: CHECK_ROW,
      column: 0,
      content: formula(`=${checkFormula(base, now, items, previous, sealsRow)}`),
      style: "caution",
    },
    ...(Object.keys(CHANGE_COLUMNS) as ChangeColumn[]).map((column): PlannedCell => ({
      row: FIRST_LINE_ROW - 1,
      column: CHANGE_COLUMNS[column],
      content: text(CHANGE_HEADINGS[column]),
      style: "heading",
    })),
  ];
};

const causeCells = (row: number, rows: readonly CauseRow[]): PlannedCell[] => {
  const cell = (index: number, column: number, words: string): PlannedCell => ({
    row: row + 1 + index,
    column,
    content: words === "" ? null : text(words),
    style: "label",
  });
  return [
    { row, column: 0, content: text("Why it moved"), style: "section" },
    ...rows.flatMap(({ about, sentence }, index) => [
      cell(index, CHANGE_COLUMNS.item, about),
      cell(index, CHANGE_COLUMNS.what, sentence),
    ]),
  ];
};

const signatures = (row: number): PlannedCell[] =>
  [
    ["Agreed for the owner", CHANGE_COLUMNS.item],
    ["For the contractor", AMOUNT_COLUMNS.label],
  ].map(([who, column]) => ({
    row,
    column: Number(column),
    content: text(`${who}: ${SIGNATURE}  Date: ${"_".repeat(12)}`),
    style: "label",
  }));

/** The change order sheet: what changed between two orders, by how much, at what price, and the contract sum to date. */
export const changeOrderSheet = (options: ChangeOrderOptions): SheetPlan => {
  const { base, now, dateSerial, previous } = options;
  const items = itemsOf(base, now, options.renamed);
  const lines = items.length;
  const why = causesRow(lines);
  const causes = causeRows(options.causes);
  const sectionRow = why + causes.length + 2;
  const sealsRow = firstSealRow(sectionRow);
  const signed = sealedBlocksOf([base, now]);
  const signatureRow = sealsRow + signed.length + previous.length + 3;
  const cells: PlannedCell[] = [
    ...head(options, items, sealsRow),
    ...changeLines(items, base, now, previous.at(-1)),
    ...termCells(lines, dateSerial, previous),
    ...amountCells(lines, previous, { row: sealsRow, signed: signed.length }),
    ...causeCells(why, causes),
    ...sealCells({ sectionRow, sheet: options.sheetName, lines, signed, previous, isDraft: !now.sealed }),
    ...signatures(signatureRow),
    ...cautionCells(signatureRow + 2),
  ];
  return {
    name: options.sheetName,
    print: "one page wide, landscape",
    frozenRows: FIRST_LINE_ROW,
    columnWidths: [150, 84, 60, 135, 70, 66, 168, 66, 66, 92, 70, 70, 135, 66, 80, 64, 70, 150, 60],
    rowHeights: rowHeightsOf(cells),
    cells,
  };
};
