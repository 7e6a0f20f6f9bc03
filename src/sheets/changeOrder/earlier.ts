import { type Cell } from "../../../shared/cell";
import { absoluteA1 } from "../address";
import { shownAt, type Contents, type SheetContents } from "../contents";
import { AMOUNT_COLUMNS, AMOUNTS, TERM_COLUMNS, TERMS, type Term } from "./layout";

/** A change order that the workbook has already. */
export interface Earlier {
  readonly sheet: string;
  readonly totalCell: string;
  readonly daysCell: string;
  readonly contractCell: string;
  readonly terms: Readonly<Record<Term, Cell>>;
}

const rowOf = ({ cells }: SheetContents, column: number, label: string): number =>
  cells.findIndex((line) => line[column] === label);

const termRowOn = (sheet: SheetContents, term: Term): number => rowOf(sheet, TERM_COLUMNS.label, TERMS[term]);

/** Whether a sheet is a change order, by the label of its total. */
export const isChangeOrder = (sheet: SheetContents): boolean =>
  rowOf(sheet, AMOUNT_COLUMNS.label, AMOUNTS.total) >= 0 && termRowOn(sheet, "days") >= 0;

/** The change orders of a workbook, in its order; what they say is found by its label, wherever rows were inserted. */
export const earlierChangeOrders = ({ sheets }: Contents): Earlier[] =>
  [...sheets].flatMap(([name, sheet]): Earlier[] => {
    if (!isChangeOrder(sheet)) return [];
    const term = (of: Term) => ({ row: termRowOn(sheet, of), column: TERM_COLUMNS.value });
    return [
      {
        sheet: name,
        totalCell: absoluteA1({
          row: rowOf(sheet, AMOUNT_COLUMNS.label, AMOUNTS.total),
          column: AMOUNT_COLUMNS.value,
        }),
        daysCell: absoluteA1(term("days")),
        contractCell: absoluteA1(term("contract")),
        terms: Object.fromEntries(
          (Object.keys(TERMS) as Term[]).map((of) => [of, shownAt(sheet, term(of))]),
        ) as Record<Term, Cell>,
      },
    ];
  });
