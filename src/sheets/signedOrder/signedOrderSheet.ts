import { sealSpec } from "../../../functions/money/seal";
import { isBlank, type Cell } from "../../../shared/cell";
import { productToCent, sumOfCents } from "../../../shared/money";
import { sealOf } from "../../../shared/seal";
import { VERSION } from "../../../shared/version";
import { a1, a1Range } from "../../workbook/address";
import { cautionCells } from "../cautionCells";
import { valueAt, type SheetContents } from "../../workbook/contents";
import { call } from "../../workbook/formula";
import { ORDER, ORDER_HEADINGS, type OrderColumn } from "../orderSheet/orderLayout";
import type { ReadLine, ReadOrder } from "../orderSheet/readOrder";
import { formula, number, text, value, type PlannedCell, type SheetPlan } from "../../workbook/plan";
import { rowHeightsOf } from "../../workbook/rowHeights";
import type { SealedBlock } from "../sealedBlock";
import type { Measurement } from "../trace/measurements";
import {
  AS_SIGNED,
  EDITED,
  FACT_LABELS,
  FACT_ROWS,
  MEASUREMENT_HEADINGS,
  ORDER_HEADING_ROW,
  SEAL_LABELS,
  SEAL_ROWS,
  VALUE_COLUMN,
} from "./signedOrderLayout";

export interface SignedOrderOptions {
  readonly sheetName: string;
  readonly job: string;
  /** As spreadsheets count days. */
  readonly dateSerial: number;
  readonly order: ReadOrder;
  readonly orderContents: SheetContents;
  readonly measurements: readonly Measurement[];
}

const DATE = "yyyy-mm-dd";
const FORMATS: Partial<Record<OrderColumn, string>> = {
  waste: "0%",
  weightEach: "0.000",
  weight: "#,##0",
  price: "#,##0.00",
  extended: "#,##0.00",
};
const COLUMNS = Object.keys(ORDER) as OrderColumn[];
/** What the seal covers, a sentence beside each of its rows. */
const COVERED: Readonly<Record<"signed" | "now", string>> = {
  signed: `The seal covers all from "${FACT_LABELS.job}" down to the last measurement: all that a change order reads.`,
  now: "The title, and anything added above, below or next to that, is not covered and not read.",
};
const TOTAL = "Total of the lines, before tax";
const UNPRICED = "Not in the total, and in no change order that changes them, for want of a price";

type Typed = string | number | null;
interface Row {
  readonly cells: readonly Typed[];
  readonly style: NonNullable<PlannedCell["style"]>;
  readonly numberFormats?: readonly (string | undefined)[];
}

/** TRUE and FALSE as text: a plan has no logical values. */
const typed = (cell: Cell): Typed => {
  if (isBlank(cell)) return null;
  return typeof cell === "number"
    ? cell
    : typeof cell === "boolean"
      ? String(cell).toUpperCase()
      : String(cell);
};

/** The extended price of a line, calculated as in a change order; null where it has no price. */
const extendedOf = ({ toOrder, price }: ReadLine): number | null =>
  toOrder === null || price === null ? null : productToCent(toOrder, price);

const isUnpriced = ({ toOrder, price }: ReadLine): boolean => (toOrder ?? 0) > 0 && price === null;

const orderRows = ({ order, orderContents }: SignedOrderOptions): Row[] => {
  const cellOf = (line: ReadLine, column: OrderColumn): Typed => {
    if (column === "extended") return extendedOf(line);
    const at = order.columns[column];
    return at === undefined ? null : typed(valueAt(orderContents, { row: line.row, column: at }));
  };
  const total = sumOfCents(order.lines.map((line) => extendedOf(line) ?? 0));
  const unpriced = order.lines.filter(isUnpriced).map(({ item }) => item);
  const numberFormats = COLUMNS.map((column) => FORMATS[column]);
  return [
    { cells: ORDER_HEADINGS, style: "heading" },
    ...order.lines.map((line): Row => ({
      cells: COLUMNS.map((column) => cellOf(line, column)),
      style: "label",
      numberFormats,
    })),
    {
      cells: COLUMNS.map((column) => (column === "item" ? TOTAL : column === "extended" ? total : null)),
      style: "total",
      numberFormats,
    },
    ...(unpriced.length === 0
      ? []
      : [{ cells: [`${UNPRICED}: ${unpriced.join(", ")}`], style: "caution" } as const]),
  ];
};

const measureRows = (measurements: readonly Measurement[]): Row[] => [
  { cells: ["Measures and inputs"], style: "section" },
  { cells: MEASUREMENT_HEADINGS, style: "heading" },
  ...measurements.map(({ sheet, row, heading, unit, value, kind }): Row => ({
    cells: [sheet, row, heading, unit, typed(value), kind],
    style: "label",
  })),
];

/** The sheet of a signed order, and the block that its seal covers. */
export interface FrozenOrder {
  readonly plan: SheetPlan;
  readonly sealed: SealedBlock;
}

/** A dated copy of an order and its inputs, values only: no later calculation changes it, and its seal shows an edit. */
export const signedOrderSheet = (options: SignedOrderOptions): FrozenOrder => {
  const facts: Row[] = [
    { cells: [FACT_LABELS.job, options.job], style: "label" },
    { cells: [FACT_LABELS.date, options.dateSerial], style: "label", numberFormats: [undefined, DATE] },
    { cells: [FACT_LABELS.from, options.order.sheet], style: "label" },
    { cells: [FACT_LABELS.madeBy, `Gablewright ${VERSION}`], style: "label" },
  ];
  const blank: Row = { cells: [], style: "label" };
  const block = [...facts, blank, ...orderRows(options), blank, ...measureRows(options.measurements)];
  const from = { row: FACT_ROWS.job, column: 0 };
  const to = { row: from.row + block.length - 1, column: COLUMNS.length - 1 };
  const seal = sealOf(block.map(({ cells }) => COLUMNS.map((_, column) => cells[column] ?? null)));
  const [signedAt, nowAt] = [SEAL_ROWS.signed, SEAL_ROWS.now].map((row) =>
    a1({ row, column: VALUE_COLUMN }),
  ) as [string, string];
  const sealCells = (
    row: number,
    label: string,
    content: PlannedCell["content"],
    style: PlannedCell["style"],
  ): PlannedCell[] => [
    { row, column: 0, content: text(label), style: "label" },
    { row, column: VALUE_COLUMN, content, style, numberFormat: "0" },
  ];
  const cells: PlannedCell[] = [
    {
      row: 0,
      column: 0,
      content: text(options.job === "" ? options.sheetName : `${options.sheetName}: ${options.job}`),
      style: "title",
    },
    {
      row: 1,
      column: 0,
      content: text(
        "Values only, protected without a password: what was agreed, and the inputs that made it. The seal shows an edit; it is no proof against a forger.",
      ),
      style: "note",
    },
    ...sealCells(SEAL_ROWS.signed, SEAL_LABELS.signed, number(seal), "result"),
    ...(["signed", "now"] as const).map((row): PlannedCell => ({
      row: SEAL_ROWS[row],
      column: VALUE_COLUMN + 1,
      content: text(COVERED[row]),
      style: "note",
    })),
    ...sealCells(SEAL_ROWS.now, SEAL_LABELS.now, formula(`=${call(sealSpec, a1Range(from, to))}`), "result"),
    ...sealCells(
      SEAL_ROWS.status,
      SEAL_LABELS.status,
      formula(`=IF(${signedAt}=${nowAt},"${AS_SIGNED}","${EDITED}")`),
      "total",
    ),
    ...block.flatMap(({ cells: line, style, numberFormats }, index) =>
      line.flatMap((cell, column): PlannedCell[] =>
        cell === null || cell === ""
          ? []
          : [
              {
                row: from.row + index,
                column,
                content: value(cell),
                style,
                ...(numberFormats?.[column] && { numberFormat: numberFormats[column] }),
              },
            ],
      ),
    ),
    ...cautionCells(to.row + 2),
  ];
  return {
    plan: {
      name: options.sheetName,
      isProtected: true,
      print: "one page wide, portrait",
      frozenRows: 1,
      columnWidths: [170, 150, 150, 66, 90, 80, 70, 80, 80, 84, 90, 100],
      rowHeights: rowHeightsOf(cells),
      cells,
    },
    sealed: { sheet: options.sheetName, area: { from, to }, seal },
  };
};

/** The order with the rows that it has on its signed sheet. */
export const orderOnSigned = (sheetName: string, order: ReadOrder): ReadOrder => ({
  sheet: sheetName,
  headingRow: ORDER_HEADING_ROW,
  lastRow: ORDER_HEADING_ROW + order.lines.length,
  columns: ORDER,
  lines: order.lines.map((line, index) => ({ ...line, row: ORDER_HEADING_ROW + 1 + index })),
});
