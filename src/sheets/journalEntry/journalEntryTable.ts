import { CellError, isBlank, type Cell, type Matrix } from "../../../shared/cell";
import { describeCell } from "../../../shared/describe";
import { InputError } from "../../../shared/inputError";
import { sumOfCents } from "../../../shared/money";
import { isDateSerial, isoDate } from "../../../shared/sheetDate";
import type { Contents } from "../../workbook/contents";
import { CHECK_ROW, ENTRY_COLUMNS, ENTRY_HEADINGS, ENTRY_SEAL, ENTRY_TOTAL } from "./journalEntrySheet";

/** A cell that is no error, and says something. */
const filled = (cell: Cell, what: string, where: string): Cell => {
  if (isBlank(cell)) throw new InputError(`There is no ${what} in ${where}. Nothing was saved.`);
  if (cell instanceof CellError)
    throw new InputError(`The ${what} in ${where} is an error (${cell.code}). Nothing was saved.`);
  return cell;
};

const amount = (cell: Cell, where: string): number => {
  if (isBlank(cell)) return 0;
  if (typeof cell === "number" && cell >= 0) return cell;
  throw new InputError(
    `${where} is no amount of 0 or more (${cell instanceof CellError ? cell.code : String(cell)}). Nothing was saved.`,
  );
};

const dateIn = (cell: Cell, where: string): string => {
  const date = filled(cell, "date", where);
  if (typeof date === "number" && isDateSerial(date)) return isoDate(date);
  throw new InputError(
    `The date in ${where} is no date (${describeCell(date)}): type it as 2026-06-01. Nothing was saved.`,
  );
};

const movesNothing = (cell: Cell = null): boolean => isBlank(cell) || cell === 0;

const inWords = (cents: number): string => (cents === 0 ? "" : cents.toFixed(2));

/** Warnings in a journal entry's own check row. */
export const journalEntryWarnings = ({ sheets }: Contents, name: string): string[] => {
  const check = sheets.get(name)?.cells[CHECK_ROW]?.[0];
  return typeof check === "string" && !isBlank(check) ? [check] : [];
};

/** The lines of a ledger sheet as other programs take them: dates by ISO 8601, amounts with two decimals. */
export const journalEntryTable = ({ sheets }: Contents, name: string): Matrix => {
  const cells = sheets.get(name)?.cells ?? [];
  const head = cells.findIndex((line) => ENTRY_HEADINGS.every((heading, column) => line[column] === heading));
  const end = cells.findIndex((line, row) => row > head && line[ENTRY_COLUMNS.memo] === ENTRY_TOTAL);
  if (head < 0 || end < 0)
    throw new InputError(
      `"${name}" has no ledger lines between its headings and "${ENTRY_TOTAL}". Nothing was saved.`,
    );
  const lines = cells
    .slice(head + 1, end)
    .map((line, index) => ({ line, where: `row ${head + index + 2} of "${name}"` }))
    // Accounting software would import a line of zeros as a line of its own.
    .filter(({ line }) => ![line[ENTRY_COLUMNS.debit], line[ENTRY_COLUMNS.credit]].every(movesNothing))
    .map(({ line, where }) => {
      const at = (column: keyof typeof ENTRY_COLUMNS): Cell => line[ENTRY_COLUMNS[column]] ?? null;
      return {
        date: dateIn(at("date"), where),
        account: filled(at("account"), "account", where),
        memo: filled(at("memo"), "memo", where),
        debit: amount(at("debit"), `The debit in ${where}`),
        credit: amount(at("credit"), `The credit in ${where}`),
      };
    });
  if (lines.length === 0)
    throw new InputError(
      `Every line of "${name}" is blank or 0 on both sides: there is nothing to post. Nothing was saved.`,
    );
  const [debit, credit] = (["debit", "credit"] as const).map((side) =>
    sumOfCents(lines.map((line) => line[side])).toFixed(2),
  ) as [string, string];
  if (debit !== credit)
    throw new InputError(
      `The lines of "${name}" debit ${debit} and credit ${credit}: they must be equal. Nothing was saved.`,
    );
  // The check may have been cleared or moved: the seals show whether the change order was edited.
  const seals = cells.find(
    (line, row) => row > end && String(line[ENTRY_COLUMNS.memo] ?? "").startsWith(ENTRY_SEAL),
  );
  const [then, now] = [seals?.[ENTRY_COLUMNS.debit], seals?.[ENTRY_COLUMNS.credit]];
  if (typeof then !== "number" || then !== now)
    throw new InputError(
      `"${name}" is of a change order that was edited since, or has lost its seals: don't post it, write it again. Nothing was saved.`,
    );
  return [
    ENTRY_HEADINGS,
    ...lines.map((line): Cell[] => [
      line.date,
      String(line.account),
      String(line.memo),
      inWords(line.debit),
      inWords(line.credit),
    ]),
  ];
};
