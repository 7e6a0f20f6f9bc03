import { a1 } from "../../workbook/address";
import { isEmpty } from "../../workbook/formula";
import { formula, text, type PlannedCell } from "../../workbook/plan";
import { amountReference, termReference, type ExistingChangeOrder } from "./existingChangeOrders";
import {
  AMOUNT_COLUMNS,
  AMOUNTS,
  amountCell,
  amountRow,
  changeColumn,
  CHECK_ROW,
  EACH_LINE,
  GIVEN_BACK,
  termCell,
  type Amount,
} from "./changeOrderLayout";
import { unlessEdited } from "./seals";

const MONEY = "#,##0.00;-#,##0.00";
const TOTALS: readonly Amount[] = ["total", "toDate", "contractNow"];

/** Notes beside amounts. */
const NOTES: Partial<Record<Amount, string>> = {
  toDate: "each change is rounded separately: undone in parts, a cent may remain",
};

/** The rows of the seals: from `row` on, so many of signed orders, then those of previous change orders. */
interface SealRows {
  readonly row: number;
  readonly signed: number;
}

const sumOf = (cells: readonly string[]): string => (cells.length === 0 ? "0" : cells.join("+"));

/** The formula of each amount; each is rounded to the cent, half a cent away from zero. */
const formulasOf = (
  lines: number,
  previous: readonly ExistingChangeOrder[],
  seals: SealRows,
): Record<Amount, string> => {
  const amount = (of: Amount): string => amountCell(lines, of);
  const [material, labor] = (["material", "labor"] as const).map((column) => changeColumn(lines, column)) as [
    string,
    string,
  ];
  const [overhead, profit, taxRate] = (["overheadRate", "profitRate", "taxRate"] as const).map((term) =>
    termCell(lines, term),
  ) as [string, string, string];
  /** Only for complete columns: a sum that skips a line would look like the sum of all. */
  const ifWhole = (column: string, then: string): string => `IF(COUNT(${column})=${lines},${then},NA())`;
  const part = (column: string, sign: ">" | "<"): string =>
    ifWhole(column, `ROUND(SUMPRODUCT((${column}${sign}0)*${column}),2)`);
  const onDeductions = (then: string): string =>
    `IF(${termCell(lines, "deductions")}="${GIVEN_BACK}",${then},0)`;
  const share = (rate: string, ...of: Amount[]): string => `ROUND((${of.map(amount).join("+")})*${rate},2)`;
  const taxable = changeColumn(lines, "taxable");
  const taxOnLines = ifWhole(changeColumn(lines, "tax"), `ROUND(SUM(${changeColumn(lines, "tax")}),2)`);
  const taxOnTotal = ifWhole(material, `ROUND(SUMPRODUCT((${taxable}="yes")*${material})*${taxRate},2)`);
  const contract = termCell(lines, "contract");
  const ifContract = (then: string): string => `IF(${isEmpty(contract)},"",${then})`;
  const costs = `${amount("materialAdded")}:${amount("tax")}`;
  const check = a1({ row: CHECK_ROW, column: 0 });
  /** Edited change orders aren't added up. */
  const ofPrevious = (sum: string): string => unlessEdited(seals.row + seals.signed, previous.length, sum);
  return {
    materialAdded: part(material, ">"),
    materialDeducted: part(material, "<"),
    laborAdded: part(labor, ">"),
    laborDeducted: part(labor, "<"),
    overheadAdded: share(overhead, "materialAdded", "laborAdded"),
    overheadDeducted: onDeductions(share(overhead, "materialDeducted", "laborDeducted")),
    profitAdded: share(profit, "materialAdded", "laborAdded", "overheadAdded"),
    profitDeducted: onDeductions(share(profit, "materialDeducted", "laborDeducted", "overheadDeducted")),
    tax: `IF(${termCell(lines, "taxRounding")}="${EACH_LINE}",${taxOnLines},${taxOnTotal})`,
    total: `IF(${isEmpty(check)},${unlessEdited(seals.row, seals.signed + previous.length, `ROUND(SUM(${costs}),2)`)},NA())`,
    before: ofPrevious(`ROUND(${sumOf(previous.map((each) => amountReference(each, "total")))},2)`),
    toDate: `ROUND(${amount("before")}+${amount("total")},2)`,
    contractBefore: ifContract(`ROUND(${contract}+${amount("before")},2)`),
    contractNow: ifContract(`ROUND(${contract}+${amount("toDate")},2)`),
    retainage: `ROUND(${amount("total")}*${termCell(lines, "retainageRate")},2)`,
    daysToDate: ofPrevious(
      sumOf([...previous.map((each) => termReference(each, "days")), termCell(lines, "days")]),
    ),
  };
};

/** The amounts of the change, from its lines to the contract sum to date. */
export const amountCells = (
  lines: number,
  previous: readonly ExistingChangeOrder[],
  seals: SealRows,
): PlannedCell[] => {
  const formulas = formulasOf(lines, previous, seals);
  return (Object.keys(AMOUNTS) as Amount[]).flatMap((amount): PlannedCell[] => {
    const row = amountRow(lines, amount);
    const note = NOTES[amount];
    return [
      { row, column: AMOUNT_COLUMNS.label, content: text(AMOUNTS[amount]), style: "label" },
      {
        row,
        column: AMOUNT_COLUMNS.value,
        content: formula(`=${formulas[amount]}`),
        style: TOTALS.includes(amount) ? "total" : "result",
        numberFormat: amount === "daysToDate" ? "0" : MONEY,
      },
      ...(note === undefined
        ? []
        : [{ row, column: AMOUNT_COLUMNS.note, content: text(note), style: "note" } as const]),
    ];
  });
};
