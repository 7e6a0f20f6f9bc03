import { a1, a1Range, absoluteA1, sheetPrefix } from "../../workbook/address";
import { cautionCells } from "../cautionCells";
import { earlierAmount, earlierTerm, type Earlier } from "../changeOrder/earlier";
import { placeOfIssue } from "../changeOrder/seals";
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
import { ifEdited, sealFormula, type SealedBlock } from "../sealedBlock";

/** What each line of the entry is for: a person names the account. */
export const ACCOUNTS = {
  receivable: "Billed",
  retainage: "Held back",
  revenue: "Contract revenue",
  tax: "Sales tax payable",
} as const;
export type AccountUse = keyof typeof ACCOUNTS;
export type Accounts = Readonly<Record<AccountUse, string>>;

export const LEDGER_HEADINGS = ["Date", "Account", "Memo", "Debit", "Credit"] as const;
export const LEDGER = { date: 0, account: 1, memo: 2, debit: 3, credit: 4 } as const;

/** What the memo of the last row says. */
export const LEDGER_TOTAL = "Total";

/** How the row of the seals begins. */
export const LEDGER_SEAL = "Seal of";

export const CHECK_ROW = 2;
const FIRST_ROW = 4;
const MONEY = "#,##0.00";
const DATE = "yyyy-mm-dd";

interface Entry {
  readonly use: AccountUse;
  /** The side on which a charge stands; a credit stands on the other. */
  readonly side: "debit" | "credit";
  readonly amount: string;
}

/** Both sides come to the total of the change, cent by cent. */
const entriesOf = (change: Earlier): readonly Entry[] => {
  const [total, retainage, tax] = (["total", "retainage", "tax"] as const).map((amount) =>
    earlierAmount(change, amount),
  ) as [string, string, string];
  return [
    { use: "receivable", side: "debit", amount: `${total}-${retainage}` },
    { use: "retainage", side: "debit", amount: retainage },
    { use: "revenue", side: "credit", amount: `${total}-${tax}` },
    { use: "tax", side: "credit", amount: tax },
  ];
};

const entryCells = (
  { use, side, amount }: Entry,
  row: number,
  change: Earlier,
  accounts: Accounts,
): PlannedCell[] => {
  /** Blank on the side that isn't used: a 0 there would be a line of its own to whoever takes it over. */
  const on = (column: "debit" | "credit"): PlannedCell => {
    const rounded = `ROUND(${column === side ? "" : "-"}(${amount}),2)`;
    return {
      row,
      column: LEDGER[column],
      content: formula(`=IF(${rounded}>0,${rounded},"")`),
      style: "result",
      numberFormat: MONEY,
    };
  };
  return [
    {
      row,
      column: LEDGER.date,
      content: formula(`=${earlierTerm(change, "date")}`),
      style: "result",
      numberFormat: DATE,
    },
    { row, column: LEDGER.account, content: text(accounts[use]), style: "input" },
    { row, column: LEDGER.memo, content: text(`${change.sheet}: ${ACCOUNTS[use]}`), style: "input" },
    on("debit"),
    on("credit"),
  ];
};

/** What stands in the way of posting a change order that has no seal of its own yet. */
export const notIssuedYet = (changeOrder: string): string =>
  `"${changeOrder}" isn't issued yet: issue it before this is posted.`;

/** Says so until the change order is issued; one of before there were such seals has no place for one. */
const ifNotIssued = (change: Earlier): string[] => {
  const seal = placeOfIssue(change);
  if (!seal) return [];
  const cell = `${sheetPrefix(change.sheet)}${absoluteA1(seal)}`;
  return [`IF(${isEmpty(cell)},${quotedText(notIssuedYet(change.sheet))},"")`];
};

/** A change order as an entry of the journal: debit equals credit, whatever the change comes to. */
export const ledgerSheet = (
  sheetName: string,
  change: Earlier,
  accounts: Accounts,
  sealed: SealedBlock,
): SheetPlan => {
  const entries = entriesOf(change);
  const totalRow = FIRST_ROW + entries.length;
  const [debit, credit] = (["debit", "credit"] as const).map((column) =>
    a1({ row: totalRow, column: LEDGER[column] }),
  ) as [string, string];
  const sealRow = totalRow + 2;
  const [then, now] = [LEDGER.debit, LEDGER.credit].map((column) => a1({ row: sealRow, column })) as [
    string,
    string,
  ];
  const seal = (column: number, content: CellContent): PlannedCell => ({
    row: sealRow,
    column,
    content,
    style: "result",
    numberFormat: "0",
  });
  const cautions = [
    `IF(${debit}=${credit},"","Debit and credit differ: don't post this.")`,
    ifEdited(then, now, change.sheet, "this was written: don't post this."),
    ...ifNotIssued(change),
  ];
  const cells: PlannedCell[] = [
    { row: 0, column: 0, content: text(`${sheetName}: ${change.sheet}`), style: "title" },
    {
      row: 1,
      column: 0,
      content: text(
        "What is billed and held back, against revenue and tax. A deduction stands on the other side.",
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
    ...LEDGER_HEADINGS.map((heading, column): PlannedCell => ({
      row: FIRST_ROW - 1,
      column,
      content: text(heading),
      style: "heading",
    })),
    ...entries.flatMap((entry, index) => entryCells(entry, FIRST_ROW + index, change, accounts)),
    { row: totalRow, column: LEDGER.memo, content: text(LEDGER_TOTAL), style: "total" },
    ...([LEDGER.debit, LEDGER.credit] as const).map((column): PlannedCell => ({
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
      column: LEDGER.memo,
      content: text(`${LEDGER_SEAL} "${change.sheet}": then, and now`),
      style: "label",
    },
    seal(LEDGER.debit, number(sealed.seal)),
    seal(LEDGER.credit, formula(`=${sealFormula(sealed)}`)),
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
