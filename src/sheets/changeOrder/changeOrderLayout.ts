import { a1, absoluteA1 } from "../../workbook/address";

/** Columns of a change order's table. */
export const CHANGE_COLUMNS = {
  item: 0,
  what: 1,
  unit: 2,
  neededBase: 3,
  neededNow: 4,
  neededChange: 5,
  orderUnit: 6,
  orderBase: 7,
  orderNow: 8,
  orderChange: 9,
  priceBase: 10,
  priceNow: 11,
  material: 12,
  laborEach: 13,
  labor: 14,
  taxable: 15,
  tax: 16,
  reason: 17,
  initials: 18,
} as const;
export type ChangeColumn = keyof typeof CHANGE_COLUMNS;

export const CHANGE_HEADINGS: Readonly<Record<ChangeColumn, string>> = {
  item: "Item",
  what: "What happened",
  unit: "Unit",
  neededBase: "Needed, base",
  neededNow: "Needed, now",
  neededChange: "Change",
  orderUnit: "In",
  orderBase: "To order, base",
  orderNow: "To order, now",
  orderChange: "Bought or returned",
  priceBase: "Price, base",
  priceNow: "Price, now",
  material: "Material",
  laborEach: "Labor, each ordered",
  labor: "Labor",
  taxable: "Taxable",
  tax: "Tax",
  reason: "Reason",
  initials: "Initials",
};

/** The columns that formulas calculate; nobody types there. */
export const CALCULATED_COLUMNS = [
  "what",
  "neededBase",
  "neededNow",
  "neededChange",
  "orderBase",
  "orderNow",
  "orderChange",
  "priceBase",
  "priceNow",
  "material",
  "labor",
  "tax",
] as const satisfies readonly ChangeColumn[];
export type CalculatedColumn = (typeof CALCULATED_COLUMNS)[number];

export const CHECK_ROW = 2;
/** Below the check: whether an issued change order was edited. */
export const STATUS_ROW = 3;
export const FIRST_LINE_ROW = 5;

export const changeCell = (row: number, column: ChangeColumn): string =>
  a1({ row, column: CHANGE_COLUMNS[column] });

/** A column of all the lines. */
export const changeColumn = (lines: number, column: ChangeColumn): string =>
  `${absoluteA1({ row: FIRST_LINE_ROW, column: CHANGE_COLUMNS[column] })}:${absoluteA1({ row: FIRST_LINE_ROW + lines - 1, column: CHANGE_COLUMNS[column] })}`;

/** The terms below the lines, in order: a label, and beside it the value that a person chooses or types. */
export const TERMS = {
  date: "Date",
  overheadRate: "Overhead on cost",
  profitRate: "Profit on cost and overhead",
  deductions: "Both, on deductions",
  taxRate: "Sales tax, state and local",
  taxRounding: "Tax is rounded",
  retainageRate: "Retainage",
  days: "Days added by this change",
  contract: "Contract sum as signed",
} as const;
export type Term = keyof typeof TERMS;
export const TERM_COLUMNS = { label: 0, value: 3, note: 4 } as const;

export const GIVEN_BACK = "given back";
export const KEPT = "kept";
export const EACH_LINE = "each line";
export const ON_THE_TOTAL = "on the total";
/** Shown instead of a change in packs that can't be subtracted. */
export const DIFFERENT_PACKS = "unlike packs";

/** Shown instead of a change in a quantity whose unit differs. */
export const DIFFERENT_UNITS = "unlike units";

/** The amounts, beside the terms. */
export const AMOUNTS = {
  materialAdded: "Material, additions",
  materialDeducted: "Material, deductions",
  laborAdded: "Labor, additions",
  laborDeducted: "Labor, deductions",
  overheadAdded: "Overhead, additions",
  overheadDeducted: "Overhead, deductions",
  profitAdded: "Profit, additions",
  profitDeducted: "Profit, deductions",
  tax: "Sales tax",
  total: "Total of this change",
  before: "Changes before this one",
  toDate: "Changes to date",
  contractBefore: "Contract sum before this change",
  contractNow: "Contract sum now",
  retainage: "Retainage on this change",
  daysToDate: "Days added to date",
} as const;
export type Amount = keyof typeof AMOUNTS;
export const AMOUNT_COLUMNS = { label: 9, value: 12, note: 17 } as const;

/** Seals below a change order: the sheet, its seal then, its seal now, and the status. */
export const SEALS = { of: 0, then: 3, now: 12, status: 13 } as const;

const firstRowBelow = (lines: number): number => FIRST_LINE_ROW + lines + 2;

export const termRow = (lines: number, term: Term): number =>
  firstRowBelow(lines) + (Object.keys(TERMS) as Term[]).indexOf(term);
export const termCell = (lines: number, term: Term): string =>
  absoluteA1({ row: termRow(lines, term), column: TERM_COLUMNS.value });

export const amountRow = (lines: number, amount: Amount): number =>
  firstRowBelow(lines) + (Object.keys(AMOUNTS) as Amount[]).indexOf(amount);
export const amountCell = (lines: number, amount: Amount): string =>
  absoluteA1({ row: amountRow(lines, amount), column: AMOUNT_COLUMNS.value });

export const causesRow = (lines: number): number => firstRowBelow(lines) + Object.keys(AMOUNTS).length + 1;
