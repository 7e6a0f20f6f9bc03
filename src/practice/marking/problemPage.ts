import type { Cell } from "../../../shared/cell";
import type { CellAddress } from "../../workbook/address";
import { readClassLine } from "../class/classLine";
import type { VersionOptions } from "../class/classOptions";
import { ANSWER_HEADING } from "../sheets/problemSheet";
import type { Given, Question } from "../topic";

/** Reads a cell of one sheet. */
export type CellAt = (address: CellAddress) => Cell;

const CLASS_LINE_ROW = 1;
const FIRST_TEXT_ROW = 3;
/** More rows than any page has above its answers. */
const MAX_ROWS = 200;

const textAt = (cellAt: CellAt, row: number, column: number): string =>
  String(cellAt({ row, column }) ?? "").trim();

/** The number in a page's title, such as `3  Rafter factor`; undefined on any other sheet. */
export const problemNumberOn = (cellAt: CellAt): number | undefined => {
  const [, number] = /^(\d+) {2}/.exec(textAt(cellAt, 0, 0)) ?? [];
  return number === undefined ? undefined : Number(number);
};

export const versionOfPage = (cellAt: CellAt): VersionOptions | undefined =>
  readClassLine(textAt(cellAt, CLASS_LINE_ROW, 0));

/** The numbers of a text, each followed by a space. */
const numbersIn = (text: string): string =>
  (text.match(/\d+(?:\.\d+)?/g) ?? []).map((number) => `${number} `).join("");

const rowsFrom = (first: number): number[] =>
  Array.from({ length: MAX_ROWS - first }, (_, row) => first + row);

/** The question's text, up to the next empty row; a note right below it counts as its end. */
const questionText = (cellAt: CellAt): string => {
  const lines = rowsFrom(FIRST_TEXT_ROW).map((row) => textAt(cellAt, row, 0));
  return lines.slice(0, lines.indexOf("")).join(" ");
};

const hasGivensAt = (cellAt: CellAt, givens: readonly Given[], row: number): boolean =>
  givens.every(({ text }, index) => numbersIn(textAt(cellAt, row + index, 1)) === numbersIn(text));

/**
 * Where a page has its answers, in order; undefined if its numbers aren't those of the question. Only the numbers of the text,
 * the givens and the labels are compared, so pages printed with earlier wording can still be marked, and notes don't matter.
 */
export const answersOnPage = (
  cellAt: CellAt,
  { text, givens, fields }: Question,
): readonly CellAddress[] | undefined => {
  const heading = rowsFrom(FIRST_TEXT_ROW).find((row) => textAt(cellAt, row, 1) === ANSWER_HEADING);
  if (heading === undefined || !numbersIn(questionText(cellAt)).startsWith(numbersIn(text))) return undefined;
  const aboveHeading = rowsFrom(FIRST_TEXT_ROW).filter((row) => row < heading);
  if (!aboveHeading.some((row) => hasGivensAt(cellAt, givens, row))) return undefined;
  const labels = fields.map((_, index) => textAt(cellAt, heading + 1 + index, 0));
  return fields.every(
    ({ label }, at) => labels[at] !== "" && numbersIn(labels[at] ?? "") === numbersIn(label),
  )
    ? fields.map((_, index) => ({ row: heading + 1 + index, column: 1 }))
    : undefined;
};
