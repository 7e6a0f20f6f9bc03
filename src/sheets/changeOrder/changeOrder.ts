import { cautionCells } from "../cautionCells";
import { formula, text, type PlannedCell, type SheetPlan } from "../../workbook/plan";
import { rowHeightsOf } from "../../workbook/rowHeights";
import { amountCells } from "./changeOrderAmounts";
import { stops } from "./changeOrderChecks";
import type { Earlier } from "./earlier";
import {
  AMOUNT_COLUMNS,
  CHANGE,
  CHANGE_HEADINGS,
  CHECK_ROW,
  FIRST_LINE_ROW,
  whyRow,
  type ChangeColumn,
} from "./changeOrderLayout";
import { changeLines } from "./changeOrderLines";
import { firstSealRow, sealCells, signedAmong } from "./seals";
import { itemsOf, type Item, type Renamed, type Side } from "./sides";
import { termCells } from "./terms";
import type { Why } from "./why";
import { whyRows, type WhyRow } from "./whyRows";

export interface ChangeOrderOptions {
  readonly sheetName: string;
  readonly job: string;
  readonly dateSerial: number;
  readonly base: Side;
  readonly now: Side;
  /** What goes by another name than at base. */
  readonly renamed: Renamed;
  /** The change orders before this one. */
  readonly earlier: readonly Earlier[];
  readonly whys: readonly Why[];
}

const SIGNATURE = "_".repeat(34);

const head = (
  { sheetName, job, base, now, earlier }: ChangeOrderOptions,
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
      content: formula(`=${stops(base, now, items, earlier, sealsRow)}`),
      style: "caution",
    },
    ...(Object.keys(CHANGE) as ChangeColumn[]).map((column): PlannedCell => ({
      row: FIRST_LINE_ROW - 1,
      column: CHANGE[column],
      content: text(CHANGE_HEADINGS[column]),
      style: "heading",
    })),
  ];
};

const whyCells = (row: number, rows: readonly WhyRow[]): PlannedCell[] => {
  const cell = (index: number, column: number, words: string): PlannedCell => ({
    row: row + 1 + index,
    column,
    content: words === "" ? null : text(words),
    style: "label",
  });
  return [
    { row, column: 0, content: text("Why it moved"), style: "section" },
    ...rows.flatMap(({ about, sentence }, index) => [
      cell(index, CHANGE.item, about),
      cell(index, CHANGE.what, sentence),
    ]),
  ];
};

const signatures = (row: number): PlannedCell[] =>
  [
    ["Agreed for the owner", CHANGE.item],
    ["For the contractor", AMOUNT_COLUMNS.label],
  ].map(([who, column]) => ({
    row,
    column: Number(column),
    content: text(`${who}: ${SIGNATURE}  Date: ${"_".repeat(12)}`),
    style: "label",
  }));

/** What changed between two orders, by how much, at what price, and what the contract is now. */
export const changeOrderSheet = (options: ChangeOrderOptions): SheetPlan => {
  const { base, now, dateSerial, earlier } = options;
  const items = itemsOf(base, now, options.renamed);
  const lines = items.length;
  const why = whyRow(lines);
  const whys = whyRows(options.whys);
  const sectionRow = why + whys.length + 2;
  const sealsRow = firstSealRow(sectionRow);
  const signed = signedAmong([base, now]);
  const signatureRow = sealsRow + signed.length + earlier.length + 3;
  const cells: PlannedCell[] = [
    ...head(options, items, sealsRow),
    ...changeLines(items, base, now, earlier.at(-1)),
    ...termCells(lines, dateSerial, earlier),
    ...amountCells(lines, earlier, { row: sealsRow, signed: signed.length }),
    ...whyCells(why, whys),
    ...sealCells({ sectionRow, sheet: options.sheetName, lines, signed, earlier, isDraft: !now.sealed }),
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
