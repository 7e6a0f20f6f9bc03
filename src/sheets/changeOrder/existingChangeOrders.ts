import type { Cell } from "../../../shared/cell";
import { itemKey } from "../../../shared/kinds/orderLines";
import { InputError } from "../../../shared/inputError";
import { absoluteA1, sheetPrefix } from "../../workbook/address";
import { valueAt, type Contents, type SheetContents } from "../../workbook/contents";
import { isSigned } from "../signedOrder/readSignedOrder";
import { referencesOf } from "../trace/references";
import {
  AMOUNT_COLUMNS,
  AMOUNTS,
  CHANGE_COLUMNS,
  CHANGE_HEADINGS,
  SEALS,
  TERM_COLUMNS,
  TERMS,
  type Amount,
  type ChangeColumn,
  type Term,
} from "./changeOrderLayout";

/** A change order in the workbook. Its values are found by their labels, so that people can insert rows. */
export interface ExistingChangeOrder {
  readonly sheet: string;
  readonly contents: SheetContents;
  /** The sheets that it compares, undefined where no formula tells any more. */
  readonly base: string | undefined;
  readonly now: string | undefined;
  /** It compares a live order: nothing was agreed. */
  readonly isDraft: boolean;
}

/** The row of a label; -1 where there is none. */
export const rowOf = ({ cells }: SheetContents, column: number, label: string): number =>
  cells.findIndex((line) => line[column] === label);

const AMOUNT_LABELS: ReadonlySet<unknown> = new Set(Object.values(AMOUNTS));
const isAmount = (line: readonly Cell[]): boolean => AMOUNT_LABELS.has(line[AMOUNT_COLUMNS.label]);

/** The row in which amounts and terms begin, below the lines. */
const firstAmountRow = ({ cells }: SheetContents): number => cells.findIndex(isAmount);

/** Terms are beside the amounts: an item in the lines above or the causes below may have the same name as a term. */
const termRowOn = (sheet: SheetContents, term: Term): number => {
  const [first, last] = [firstAmountRow(sheet), sheet.cells.findLastIndex(isAmount)];
  return sheet.cells.findIndex(
    (line, row) => row >= first && row <= last && line[TERM_COLUMNS.label] === TERMS[term],
  );
};

/** Whether a sheet is a change order, by its headings or its labels: one that lost some is still counted, and refused. */
export const isChangeOrder = (sheet: SheetContents): boolean =>
  sheet.cells.some(
    (line) =>
      line[CHANGE_COLUMNS.item] === CHANGE_HEADINGS.item &&
      line[CHANGE_COLUMNS.what] === CHANGE_HEADINGS.what,
  ) ||
  (rowOf(sheet, AMOUNT_COLUMNS.label, AMOUNTS.total) >= 0 && termRowOn(sheet, "days") >= 0);

/** The first label that a change order needs and no longer has. */
export const missingLabel = ({ contents }: ExistingChangeOrder): string | undefined =>
  [
    { label: CHANGE_HEADINGS.item, row: rowOf(contents, CHANGE_COLUMNS.item, CHANGE_HEADINGS.item) },
    ...Object.values(AMOUNTS).map((label) => ({ label, row: rowOf(contents, AMOUNT_COLUMNS.label, label) })),
    ...(Object.keys(TERMS) as Term[]).map((term) => ({ label: TERMS[term], row: termRowOn(contents, term) })),
  ].find(({ row }) => row < 0)?.label;

/** The sheet that a column of lines looks its figures up on, by its formulas: they follow a sheet that is renamed. */
const lookedUpOn = (workbook: Contents, sheet: string, column: ChangeColumn): string | undefined => {
  const { cells = [] } = workbook.sheets.get(sheet) ?? {};
  return cells
    .flatMap((_, row) => referencesOf(workbook, sheet, { row, column: CHANGE_COLUMNS[column] }))
    .find((reference) => reference.sheet !== sheet)?.sheet;
};

type Listing = Pick<ExistingChangeOrder, "sheet" | "contents">;

/** The other sheets that a change order shows seals or amounts of: the compared orders and the previous change orders. */
export const sheetsListedOn = (workbook: Contents, { sheet, contents }: Listing): Set<string> =>
  new Set(
    contents.cells
      .flatMap((_, row) => referencesOf(workbook, sheet, { row, column: SEALS.now }))
      .flatMap((reference) => (reference.sheet === sheet ? [] : [reference.sheet])),
  );

/** A draft compares an unsigned order and holds no seal of it; an edited signed order would still have its seal listed. */
const isDraft = (workbook: Contents, change: Listing, now: string | undefined): boolean => {
  const contents = now === undefined ? undefined : workbook.sheets.get(now);
  if (now === undefined || !contents) return false;
  return !isSigned(contents) && !sheetsListedOn(workbook, change).has(now);
};

/** The change orders of a workbook, drafts too, in its order. */
export const changeOrdersIn = (workbook: Contents): ExistingChangeOrder[] =>
  [...workbook.sheets].flatMap(([sheet, contents]): ExistingChangeOrder[] => {
    if (!isChangeOrder(contents)) return [];
    const [base, now] = (["orderBase", "orderNow"] as const).map((column) =>
      lookedUpOn(workbook, sheet, column),
    );
    return [{ sheet, contents, base, now, isDraft: isDraft(workbook, { sheet, contents }, now) }];
  });

/** The change orders that are agreed, without drafts. */
export const agreedChangeOrdersIn = (workbook: Contents): ExistingChangeOrder[] =>
  changeOrdersIn(workbook).filter(({ isDraft }) => !isDraft);

/** A change order by its name, to be issued or posted: refuses a draft. */
export const agreedChangeOrder = (
  workbook: Contents,
  name: string,
  to: "issue" | "post",
): ExistingChangeOrder => {
  const change = changeOrdersIn(workbook).find(({ sheet }) => sheet === name);
  if (!change) throw new InputError(`There is no change order "${name}" in the workbook.`);
  if (change.isDraft)
    throw new InputError(
      `"${name}" is a draft: its order still moves. Make a change order that freezes it, and ${to} that. Nothing was written.`,
    );
  return change;
};

export const termAddress = ({ contents }: ExistingChangeOrder, term: Term) => ({
  row: termRowOn(contents, term),
  column: TERM_COLUMNS.value,
});

export const amountAddress = ({ contents }: ExistingChangeOrder, amount: Amount) => ({
  row: rowOf(contents, AMOUNT_COLUMNS.label, AMOUNTS[amount]),
  column: AMOUNT_COLUMNS.value,
});

/** A cell of an item's line; blank where the change order doesn't list the item. */
export const lineValue = ({ contents }: ExistingChangeOrder, item: string, column: ChangeColumn): Cell => {
  const head = rowOf(contents, CHANGE_COLUMNS.item, CHANGE_HEADINGS.item);
  const isIts = (cell: Cell | undefined): boolean =>
    typeof cell === "string" && itemKey(cell) === itemKey(item);
  const end = firstAmountRow(contents);
  const row = contents.cells.findIndex(
    (line, at) => at > head && at < end && isIts(line[CHANGE_COLUMNS.item]),
  );
  return row < 0 || head < 0 ? null : valueAt(contents, { row, column: CHANGE_COLUMNS[column] });
};

/** A term's cell, as another sheet calls it. */
export const termReference = (change: ExistingChangeOrder, term: Term): string =>
  `${sheetPrefix(change.sheet)}${absoluteA1(termAddress(change, term))}`;

/** An amount's cell, as another sheet calls it. */
export const amountReference = (change: ExistingChangeOrder, amount: Amount): string =>
  `${sheetPrefix(change.sheet)}${absoluteA1(amountAddress(change, amount))}`;

export const termValue = (change: ExistingChangeOrder, term: Term): Cell =>
  valueAt(change.contents, termAddress(change, term));

export const amountValue = (change: ExistingChangeOrder, amount: Amount): Cell =>
  valueAt(change.contents, amountAddress(change, amount));
