import { a1, a1Range, absoluteA1, sheetPrefix } from "../../workbook/address";
import { cautionCells } from "../cautionCells";
import {
  amountReference,
  termReference,
  type ExistingChangeOrder,
} from "../changeOrder/existingChangeOrders";
import { issueSealAddress } from "../changeOrder/seals";
import { isEmpty, quotedText } from "../../workbook/formula";
import {
  formula,
  number,
  text,
  type CellContent,
  type PlannedCell,
  type SheetPlan,
} from "../../workbook/plan";
import { rowHeightsOf } from "../../workbook/rowHeights";
import { editedWarningFormula, sealFormula, type SealedBlock } from "../sealedBlock";

/** What each line of the entry is for: a person names the account. */
export const ACCOUNTS = {
  receivable: "Billed",
  retainage: "Held back",
  revenue: "Contract revenue",
  tax: "Sales tax payable",
} as const;
export type AccountUse = keyof typeof ACCOUNTS;
export type Accounts = Readonly<Record<AccountUse, string>>;

export const ENTRY_HEADINGS = ["Date", "Account", "Memo", "Debit", "Credit"] as const;
export const ENTRY_COLUMNS = { date: 0, account: 1, memo: 2, debit: 3, credit: 4 } as const;

/** The memo of the last row. */
export const ENTRY_TOTAL = "Total";

/** How the row of the seals begins. */
export const ENTRY_SEAL = "Seal of";

export const CHECK_ROW = 2;
const FIRST_ROW = 4;
const MONEY = "#,##0.00";
const DATE = "yyyy-mm-dd";

interface EntryLine {
  readonly use: AccountUse;
  /** The side of an addition; a deduction goes on the other side. */
  readonly side: "debit" | "credit";
  readonly amount: string;
}

/** Both sides come to the total of the change, cent by cent. */
const entryLines = (change: ExistingChangeOrder): readonly EntryLine[] => {
  const [total, retainage, tax] = (["total", "retainage", "tax"] as const).map((amount) =>
    amountReference(change, amount),
  ) as [string, string, string];
  return [
    { use: "receivable", side: "debit", amount: `${total}-${retainage}` },
    { use: "retainage", side: "debit", amount: retainage },
    { use: "revenue", side: "credit", amount: `${total}-${tax}` },
    { use: "tax", side: "credit", amount: tax },
  ];
};

const entryCells = (
  { use, side, amount }: EntryLine,
  row: number,
  change: ExistingChangeOrder,
  accounts: Accounts,
): PlannedCell[] => {
  /** The unused side is blank: accounting software would import a 0 as a line of its own. */
  const on = (column: "debit" | "credit"): PlannedCell => {
    const rounded = `ROUND(${column === side ? "" : "-"}(${amount}),2)`;
    return {
      row,
      column: ENTRY_COLUMNS[column],
      content: formula(`=IF(${rounded}>0,${rounded},"")`),
      style: "result",
      numberFormat: MONEY,
    };
  };
  return [
    {
      row,
      column: ENTRY_COLUMNS.date,
      content: formula(`=${termReference(change, "date")}`),
      style: "result",
      numberFormat: DATE,
    },
    { row, column: ENTRY_COLUMNS.account, content: text(accounts[use]), style: "input" },
    { row, column: ENTRY_COLUMNS.memo, content: text(`${change.sheet}: ${ACCOUNTS[use]}`), style: "input" },
    on("debit"),
    on("credit"),
  ];
};

/** The warning about a change order without a seal of its own. */
export const notIssuedWarning = (changeOrder: string): string =>
  `"${changeOrder}" isn't issued yet: issue it before this is posted.`;

/** Says so until the change order is issued; one of before there were such seals has no place for one. */
const ifNotIssued = (change: ExistingChangeOrder): string[] => {
  const seal = issueSealAddress(change);
  if (!seal) return [];
  const cell = `${sheetPrefix(change.sheet)}${absoluteA1(seal)}`;
  return [`IF(${isEmpty(cell)},${quotedText(notIssuedWarning(change.sheet))},"")`];
};

/** A change order as a journal entry: debits equal credits, for any total. */
export const journalEntrySheet = (
  sheetName: string,
  change: ExistingChangeOrder,
  accounts: Accounts,
  sealed: SealedBlock,
): SheetPlan => {
  const entries = entryLines(change);
  const totalRow = FIRST_ROW + entries.length;
  const [debit, credit] = (["debit", "credit"] as const).map((column) =>
    a1({ row: totalRow, column: ENTRY_COLUMNS[column] }),
  ) as [string, string];
  const sealRow = totalRow + 2;
  const [then, now] = [ENTRY_COLUMNS.debit, ENTRY_COLUMNS.credit].map((column) =>
    a1({ row: sealRow, column }),
  ) as [string, string];
  const seal = (column: number, content: CellContent): PlannedCell => ({
    row: sealRow,
    column,
    content,
    style: "result",
    numberFormat: "0",
  });
  const cautions = [
    `IF(${debit}=${credit},"","Debit and credit differ: don't post this.")`,
    editedWarningFormula(then, now, change.sheet, "this was written: don't post this."),
    ...ifNotIssued(change),
  ];
  const cells: PlannedCell[] = [
    { row: 0, column: 0, content: text(`${sheetName}: ${change.sheet}`), style: "title" },
    {
      row: 1,
      column: 0,
      content: text(
        "What is billed and held back, against revenue and tax. A deduction goes on the other side.",
      ),
      style: "note",
    },
    {
      row: CHECK_ROW,
      column: 0,
      content: formula(
        `=IF(ISERROR(${debit}),"The change order has no total: don't post this.",TEXTJOIN(" ",TRUE,${cautions.join(",")}))`,
      ),
      style: "caution",
    },
    ...ENTRY_HEADINGS.map((heading, column): PlannedCell => ({
      row: FIRST_ROW - 1,
      column,
      content: text(heading),
      style: "heading",
    })),
    ...entries.flatMap((entry, index) => entryCells(entry, FIRST_ROW + index, change, accounts)),
    { row: totalRow, column: ENTRY_COLUMNS.memo, content: text(ENTRY_TOTAL), style: "total" },
    ...([ENTRY_COLUMNS.debit, ENTRY_COLUMNS.credit] as const).map((column): PlannedCell => ({
      row: totalRow,
      column,
      content: formula(
        `=ROUND(SUM(${a1Range({ row: FIRST_ROW, column }, { row: totalRow - 1, column })}),2)`,
      ),
      style: "total",
      numberFormat: MONEY,
    })),
    {
      row: sealRow,
      column: ENTRY_COLUMNS.memo,
      content: text(`${ENTRY_SEAL} "${change.sheet}": then, and now`),
      style: "label",
    },
    seal(ENTRY_COLUMNS.debit, number(sealed.seal)),
    seal(ENTRY_COLUMNS.credit, formula(`=${sealFormula(sealed)}`)),
    ...cautionCells(sealRow + 2),
  ];
  return {
    name: sheetName,
    frozenRows: FIRST_ROW,
    print: "one page, landscape",
    columnWidths: [100, 200, 280, 130, 130],
    rowHeights: rowHeightsOf(cells),
    cells,
  };
};
