import { CellError, isBlank, type Cell } from "../../../shared/cell";
import { describeCell } from "../../../shared/describe";
import { InputError } from "../../../shared/inputError";
import { itemKey } from "../../../shared/kinds/orderLines";
import { a1 } from "../../workbook/address";
import { formulaAt, valueAt, type Contents, type SheetContents } from "../../workbook/contents";
import { ORDER, ORDER_HEADINGS, type OrderColumn } from "./orderLayout";

/** A line of an order as it stands on a sheet; null is blank: nothing is needed, or no price is known. */
export interface ReadLine {
  readonly row: number;
  readonly item: string;
  readonly unit: string;
  readonly needed: number | null;
  readonly toOrder: number | null;
  readonly orderUnit: string;
  readonly price: number | null;
  /** As it shows; null where the order has no such column, or no number in it. */
  readonly waste: number | null;
  readonly perPack: number | null;
}

/** An order as it stands: rows and columns are counted from 0. */
export interface ReadOrder {
  readonly sheet: string;
  readonly headingRow: number;
  readonly lastRow: number;
  readonly columns: Readonly<Record<OrderColumn, number | undefined>>;
  readonly lines: readonly ReadLine[];
}

/** White space other than the two spaces that every program takes for one. */
const ODD_SPACE = /[^\S \u00a0]/;
const REQUIRED = ["item", "unit", "needed", "toOrder", "orderUnit", "price"] as const;

interface Head {
  readonly row: number;
  readonly columns: ReadOrder["columns"];
}

/** The row in which an order's headings stand, in whatever columns. */
const headOf = ({ cells }: SheetContents): Head | undefined => {
  for (const [row, line] of cells.entries()) {
    const columns = Object.fromEntries(
      (Object.keys(ORDER) as OrderColumn[]).map((column) => {
        const at = line.indexOf(ORDER_HEADINGS[ORDER[column]] ?? "");
        return [column, at < 0 ? undefined : at];
      }),
    ) as Head["columns"];
    if (REQUIRED.every((column) => columns[column] !== undefined)) return { row, columns };
  }
  return undefined;
};

/** Whether a sheet holds an order. */
export const isOrder = (sheet: SheetContents): boolean => headOf(sheet) !== undefined;

/** Reads an order, and refuses with a sentence what would have to be guessed. */
export const readOrder = (name: string, sheet: SheetContents): ReadOrder => {
  const head = headOf(sheet);
  if (!head)
    throw new InputError(
      `"${name}" has no order: no row has the headings ${REQUIRED.map((column) => ORDER_HEADINGS[ORDER[column]]).join(", ")}.`,
    );
  const place = (row: number, column: (typeof REQUIRED)[number]) => ({
    row,
    column: head.columns[column] ?? 0,
  });
  const shown = (row: number, column: (typeof REQUIRED)[number]): Cell => valueAt(sheet, place(row, column));
  const where = (row: number, column: (typeof REQUIRED)[number]): string =>
    `${a1(place(row, column))} on "${name}"`;

  /** A cell that is a number or blank. */
  const amount = (row: number, column: "needed" | "toOrder" | "price", what: string): number | null => {
    const cell = shown(row, column);
    if (isBlank(cell)) return null;
    if (typeof cell === "number" && cell >= 0) return cell;
    const error = cell instanceof CellError && cell.message !== "" ? ` (${cell.message})` : "";
    throw new InputError(
      `${where(row, column)}, ${what}, takes a number of 0 or more, got ${describeCell(cell)}${error}. Nothing was written.`,
    );
  };
  const numberShown = (row: number, column: number | undefined): number | null => {
    const cell = column === undefined ? null : valueAt(sheet, { row, column });
    return typeof cell === "number" ? cell : null;
  };
  const words = (row: number, column: "item" | "unit" | "orderUnit"): string => {
    const cell = shown(row, column);
    if (cell instanceof CellError)
      throw new InputError(`${where(row, column)} is an error (${cell.code}). Nothing was written.`);
    if (isBlank(cell)) return "";
    if (typeof cell !== "string")
      throw new InputError(
        `${where(row, column)} takes words, got ${describeCell(cell)}. Nothing was written.`,
      );
    // Programs differ in which of these they take for spaces, and so would find an item or not.
    if (ODD_SPACE.test(cell))
      throw new InputError(
        `${where(row, column)} has a line break, a tab or another sign that only looks like a space: type it with plain spaces. Nothing was written.`,
      );
    return cell;
  };

  const rows = sheet.cells
    .map((_, row) => row)
    .filter((row) => row > head.row)
    .filter((row) => formulaAt(sheet, place(row, "toOrder")) !== "" || !isBlank(shown(row, "toOrder")));
  const lines = rows.flatMap((row): ReadLine[] => {
    const item = words(row, "item");
    const toOrder = amount(row, "toOrder", `the order of ${item === "" ? "a line without a name" : item}`);
    if (item === "" && toOrder === null) return [];
    if (item === "")
      throw new InputError(
        `Row ${row + 1} of "${name}" orders ${toOrder} of an item without a name. Nothing was written.`,
      );
    return [
      {
        row,
        item,
        unit: words(row, "unit"),
        needed: amount(row, "needed", `the need of ${item}`),
        toOrder,
        orderUnit: words(row, "orderUnit"),
        price: amount(row, "price", `the price of ${item}`),
        waste: numberShown(row, head.columns.waste),
        perPack: numberShown(row, head.columns.perPack),
      },
    ];
  });

  const lastRow = rows.at(-1) ?? head.row;
  const rowOfItem = new Map<string, number>();
  for (let row = head.row + 1; row <= lastRow; row++) {
    const item = words(row, "item");
    if (item === "") continue;
    const earlier = rowOfItem.get(itemKey(item));
    if (earlier !== undefined)
      throw new InputError(
        `"${name}" has "${item}" twice, in rows ${earlier + 1} and ${row + 1}: an item may stand there once. Nothing was written.`,
      );
    rowOfItem.set(itemKey(item), row);
  }
  return { sheet: name, headingRow: head.row, lastRow, columns: head.columns, lines };
};

/** The names of the sheets that hold an order, in the workbook's order. */
export const orderSheetsOf = ({ sheets }: Contents): string[] =>
  [...sheets].filter(([, sheet]) => isOrder(sheet)).map(([name]) => name);
