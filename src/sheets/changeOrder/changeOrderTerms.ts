import type { Cell } from "../../../shared/cell";
import { isEmpty } from "../../workbook/formula";
import { formula, number, text, value, type CellContent, type PlannedCell } from "../../workbook/plan";
import { termReference, termValue, type ExistingChangeOrder } from "./existingChangeOrders";
import {
  EACH_LINE,
  GIVEN_BACK,
  KEPT,
  ON_THE_TOTAL,
  TERM_COLUMNS,
  TERMS,
  termRow,
  type Term,
} from "./changeOrderLayout";

const RATE = "0.00%";
const FORMATS: Readonly<Record<Term, string>> = {
  date: "yyyy-mm-dd",
  overheadRate: RATE,
  profitRate: RATE,
  deductions: "General",
  taxRate: RATE,
  taxRounding: "General",
  retainageRate: RATE,
  days: "0",
  contract: "#,##0.00",
};

const NOTES: Partial<Record<Term, string>> = {
  overheadRate: "of material and labor",
  deductions: "kept: returned items are credited at cost",
  taxRate: "of taxable material: the state says what is",
  taxRounding: "half a cent away from zero",
  retainageRate: "the contract and the law set it",
};

const CHOICES: Partial<Record<Term, readonly string[]>> = {
  deductions: [KEPT, GIVEN_BACK],
  taxRounding: [EACH_LINE, ON_THE_TOTAL],
};

const typed = (cell: Cell): CellContent | null =>
  typeof cell === "number" || typeof cell === "string" ? value(cell) : null;

/** The terms carry over from the previous change order; the first one gets the usual terms. */
const contentOf = (
  term: Term,
  dateSerial: number,
  previous: readonly ExistingChangeOrder[],
): CellContent | null => {
  const last = previous.at(-1);
  switch (term) {
    case "date":
      return number(dateSerial);
    case "days":
      return number(0);
    case "contract": {
      // What was left blank before is typed here.
      if (!last || typeof termValue(last, "contract") !== "number") return null;
      const cell = termReference(last, "contract");
      return formula(`=IF(${isEmpty(cell)},"",${cell})`);
    }
    case "deductions":
      return last ? typed(termValue(last, "deductions")) : text(KEPT);
    case "taxRounding":
      return last ? typed(termValue(last, "taxRounding")) : text(EACH_LINE);
    default:
      return last ? typed(termValue(last, term)) : number(0);
  }
};

/** The cells for rates, rounding, days and the contract sum. */
export const termCells = (
  lines: number,
  dateSerial: number,
  previous: readonly ExistingChangeOrder[],
): PlannedCell[] =>
  (Object.keys(TERMS) as Term[]).flatMap((term): PlannedCell[] => {
    const row = termRow(lines, term);
    const [note, choices] = [NOTES[term], CHOICES[term]];
    const content = contentOf(term, dateSerial, previous);
    return [
      { row, column: TERM_COLUMNS.label, content: text(TERMS[term]), style: "label" },
      {
        row,
        column: TERM_COLUMNS.value,
        content,
        style: content?.kind === "formula" ? "result" : "input",
        numberFormat: FORMATS[term],
        ...(choices && { choices }),
      },
      ...(note === undefined
        ? []
        : [{ row, column: TERM_COLUMNS.note, content: text(note), style: "note" } as const]),
    ];
  });
