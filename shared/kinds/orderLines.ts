import { isBlank, type Cell, type Matrix } from "../cell";
import { InputError } from "../inputError";
import type { Filled, RangeKind } from "./kind";
import { money, quantity } from "./number";

/** An item of an order, by its name. */
export interface OrderLine {
  readonly item: string;
  readonly quantity: number;
  readonly price: number;
}

const HEADED = /quantity|qty|price|to order|needed/i;
const isText = (cell: Cell | undefined): boolean => typeof cell === "string" && HEADED.test(cell);
const isHeading = ([, quantityCell, priceCell]: readonly Cell[]): boolean =>
  isText(quantityCell) && isText(priceCell);

const aQuantity = quantity("");
const aPrice = money();

const readFilled = <T>(
  cell: Cell | undefined,
  label: string,
  kind: { readonly takes: string; read(cell: Filled, label: string): T },
): T => {
  if (isBlank(cell)) throw new InputError(`${label} is missing: it takes ${kind.takes}`);
  return kind.read(cell, label);
};

const readLine = ([itemCell = null, quantityCell, priceCell]: readonly Cell[], label: string): OrderLine => {
  if (isBlank(itemCell)) throw new InputError(`${label} has a line without an item`);
  const item = String(itemCell).trim();
  return {
    item,
    quantity: readFilled(quantityCell, `${label}: the quantity of "${item}"`, aQuantity),
    price: readFilled(priceCell, `${label}: the price of "${item}"`, aPrice),
  };
};

/** How items are told apart: as a person reads them, letter case aside, and however many spaces of whichever kind. */
export const itemKey = (item: string): string =>
  item
    .replace(/[ \u00a0]+/g, " ")
    .trim()
    .toLowerCase();

/** Three columns, item, quantity and price, with or without a heading row; blank rows are passed over. */
export const orderLines: RangeKind<readonly OrderLine[]> = {
  shape: "range",
  takes: "a range of three columns: item, quantity, price",
  read: (cells: Matrix, label) => {
    if ((cells[0]?.length ?? 0) !== 3)
      throw new InputError(
        `${label} takes three columns, item, quantity and price, got ${cells[0]?.length ?? 0}`,
      );
    const rows = cells.filter((row) => !row.every(isBlank));
    const lines = rows
      .filter((row, index) => index > 0 || !isHeading(row))
      .map((row) => readLine(row, label));
    const seen = new Set<string>();
    for (const { item } of lines) {
      if (seen.has(itemKey(item)))
        throw new InputError(`${label} has "${item}" twice: an item may stand there once`);
      seen.add(itemKey(item));
    }
    return lines;
  },
};
