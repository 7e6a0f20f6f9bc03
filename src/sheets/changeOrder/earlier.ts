import type { Cell } from "../../../shared/cell";
import { absoluteA1, sheetPrefix } from "../address";
import { shownAt, type Contents, type SheetContents } from "../contents";
import { AMOUNT_COLUMNS, AMOUNTS, TERM_COLUMNS, TERMS, type Amount, type Term } from "./layout";

/** A change order that the workbook has already; what it says is found by its label, wherever rows were inserted. */
export interface Earlier {
  readonly sheet: string;
  readonly contents: SheetContents;
}

const rowOf = ({ cells }: SheetContents, column: number, label: string): number =>
  cells.findIndex((line) => line[column] === label);

const termRowOn = (sheet: SheetContents, term: Term): number => rowOf(sheet, TERM_COLUMNS.label, TERMS[term]);

/** Whether a sheet is a change order, by the label of its total. */
export const isChangeOrder = (sheet: SheetContents): boolean =>
  rowOf(sheet, AMOUNT_COLUMNS.label, AMOUNTS.total) >= 0 && termRowOn(sheet, "days") >= 0;

/** The change orders of a workbook, in its order. */
export const earlierChangeOrders = ({ sheets }: Contents): Earlier[] =>
  [...sheets].flatMap(([sheet, contents]) => (isChangeOrder(contents) ? [{ sheet, contents }] : []));

const termPlace = ({ contents }: Earlier, term: Term) => ({
  row: termRowOn(contents, term),
  column: TERM_COLUMNS.value,
});

const amountPlace = ({ contents }: Earlier, amount: Amount) => ({
  row: rowOf(contents, AMOUNT_COLUMNS.label, AMOUNTS[amount]),
  column: AMOUNT_COLUMNS.value,
});

/** A term's cell, as another sheet calls it. */
export const earlierTerm = (earlier: Earlier, term: Term): string =>
  `${sheetPrefix(earlier.sheet)}${absoluteA1(termPlace(earlier, term))}`;

/** An amount's cell, as another sheet calls it. */
export const earlierAmount = (earlier: Earlier, amount: Amount): string =>
  `${sheetPrefix(earlier.sheet)}${absoluteA1(amountPlace(earlier, amount))}`;

export const termShown = (earlier: Earlier, term: Term): Cell =>
  shownAt(earlier.contents, termPlace(earlier, term));

export const amountShown = (earlier: Earlier, amount: Amount): Cell =>
  shownAt(earlier.contents, amountPlace(earlier, amount));
