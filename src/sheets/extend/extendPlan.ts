import { InputError } from "../../../shared/inputError";
import { a1, a1Range } from "../../workbook/address";
import { isEmpty, unlessEmpty } from "../../workbook/formula";
import { uniqueName } from "../../workbook/uniqueName";
import type { CellPatch, PatchCell } from "../../workbook/patch";
import { formula, text } from "../../workbook/plan";
import type { Block } from "./block";
import { isMost } from "./columnData";
import type { ResultOption } from "./resultOptions";
import { resultExpression, type RowExpression, type AvailableInputs } from "./rowExpressions";
import { canBeTotaled } from "./canBeTotaled";

/** A result that the user picked, and its heading. */
export interface Pick {
  readonly option: ResultOption;
  readonly heading: string;
}

/** The cell stays blank until one of its input cells is filled. Then the function's error names a missing one. */
const whenFilled = ({ columns }: RowExpression, row: number, then: string): string => {
  const cells = columns.map(({ column }) => a1({ row, column }));
  const [only] = cells;
  if (cells.length === 1 && only !== undefined) return unlessEmpty(only, then);
  if (cells.length === 0) return `=${then}`;
  return `=IF(AND(${cells.map(isEmpty).join(",")}),"",${then})`;
};

/** The whole formula of a result in a row. */
export const rowFormula = (expression: RowExpression, row: number): string =>
  whenFilled(expression, row, expression.inRow(row));

const totalCell = ({ firstRow, lastRow, total }: Block, column: number, numberFormat: string): PatchCell => {
  const rows = a1Range({ row: firstRow, column }, { row: lastRow, column });
  return { content: formula(`=${total?.call ?? ""}${rows})`), numberFormat };
};

/** A result's cells from the heading down to the total. */
const columnCells = (
  block: Block,
  column: number,
  { option, heading }: Pick,
  inputs: AvailableInputs,
): (PatchCell | null)[] => {
  const { numberFormat } = option.spec.result;
  const expression = resultExpression(option.spec, inputs);
  const rows = Array.from(
    { length: block.lastRow - block.firstRow + 1 },
    (_, index) => block.firstRow + index,
  );
  const total = canBeTotaled(option.spec) ? totalCell(block, column, numberFormat) : null;
  return [
    { content: text(heading) },
    ...rows.map((row): PatchCell => ({ content: formula(rowFormula(expression, row)), numberFormat })),
    ...(block.total ? [total] : []),
  ];
};

/** Makes headings unique: a spreadsheet table can't have two columns of the same name. */
const distinctHeadings = (picks: readonly Pick[], taken: readonly string[]): Pick[] =>
  picks.reduce<Pick[]>((done, pick) => {
    const wanted = pick.heading.trim() === "" ? pick.option.heading : pick.heading;
    return [
      ...done,
      { ...pick, heading: uniqueName(wanted, [...taken, ...done.map(({ heading }) => heading)]) },
    ];
  }, []);

/** The last column of numbers. Results copy its formats, rather than those of notes beside it. */
const columnOfNumbers = ({ data, firstColumn }: Block): number | undefined => {
  const last = data.findLastIndex((each) => isMost(each.numbers.length, each));
  return last < 0 ? undefined : firstColumn + last;
};

/** The columns that would be added to a block, starting at `firstColumn`. */
export const extendPlan = (
  block: Block,
  picks: readonly Pick[],
  inputs: AvailableInputs,
  firstColumn: number,
): CellPatch => {
  if (picks.length === 0) throw new InputError("Pick at least one result.");
  const columns = distinctHeadings(picks, block.headings).map((pick, index) =>
    columnCells(block, firstColumn + index, pick, inputs),
  );
  const isBeside = firstColumn === block.lastColumn + 1;
  return {
    sheet: block.sheet,
    at: { row: block.headingRow, column: firstColumn },
    cells: (columns[0] ?? []).map((_, row) => columns.map((column) => column[row] ?? null)),
    copyFormatsFrom: { column: columnOfNumbers(block) ?? block.lastColumn },
    ...(block.table && isBeside && { table: block.table }),
  };
};
