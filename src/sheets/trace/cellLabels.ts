import { CellError, isBlank } from "../../../shared/cell";
import type { CellAddress } from "../../workbook/address";
import { formulaAt, valueAt, type Contents, type SheetContents } from "../../workbook/contents";

/** What a cell is called: its sheet, its row's name and its column's heading. It stays the same where rows are inserted. */
export interface CellLabel {
  readonly sheet: string;
  /** The name of its row: `Plane B`, `exposed width`. */
  readonly row: string;
  /** The heading of its column, without its unit; empty text where there is none. */
  readonly heading: string;
}

/** The column that holds a row's unit; the values under the headings below are in it. */
export const UNIT_HEADING = "Unit";
const IN_UNIT_OF_ROW: readonly string[] = ["Value", "In use", "Needed", "With waste"];

const IN_BRACKETS = / ?\(([^()]*)\)$/;

/** The labels of one sheet's cells. */
export interface Labels {
  at(place: CellAddress): (CellLabel & { readonly unit: string }) | undefined;
}

/** A name of so many letters or fewer gets the column's heading before it: `Plane B`, `Side 3`. */
const SHORT_NAME = 2;

export const labelsOf = (name: string, sheet: SheetContents): Labels => {
  const { cells } = sheet;
  const isFilled = (row: number, column: number): boolean => !isBlank(valueAt(sheet, { row, column }));
  const isTyped = (row: number, column: number): boolean => formulaAt(sheet, { row, column }) === "";
  const isText = (row: number, column: number): boolean =>
    isFilled(row, column) && isTyped(row, column) && typeof valueAt(sheet, { row, column }) === "string";
  const filledIn = (row: number): number[] =>
    (cells[row] ?? []).flatMap((_, column) =>
      isFilled(row, column) || !isTyped(row, column) ? [column] : [],
    );

  /** A row of three or more typed texts from the first column on, only texts, with at most a title above. */
  const isHeading = (row: number): boolean =>
    [0, 1, 2].every((column) => isText(row, column)) &&
    filledIn(row).every((column) => isText(row, column)) &&
    [1, 2].every((column) => !filledIn(row - 1).includes(column));
  /** A title or a note: the only text in its row. */
  const isTitle = (row: number): boolean => filledIn(row).join() === "0" && isText(row, 0);

  let heading: number | undefined;
  const headingRows = cells.map((_, row) => {
    if (isHeading(row)) return (heading = row);
    if (isTitle(row)) heading = undefined;
    return heading;
  });
  const headingAt = (row: number, column: number): string => {
    const at = headingRows[row];
    const shown = at === undefined || at === row ? null : valueAt(sheet, { row: at, column });
    return typeof shown === "string" ? shown : "";
  };

  // Rows of one table with the same name are numbered in their order.
  const times = new Map<string, number>();
  const rowNames = cells.map((_, row) => {
    const shown = valueAt(sheet, { row, column: 0 });
    if (isBlank(shown) || shown instanceof CellError) return `row ${row + 1}`;
    const bare = String(shown);
    const fullName =
      bare.length > SHORT_NAME ? bare : `${headingAt(row, 0).replace(IN_BRACKETS, "")} ${bare}`.trim();
    const key = `${headingRows[row]} ${fullName.toLowerCase()}`;
    const time = (times.get(key) ?? 0) + 1;
    times.set(key, time);
    return time === 1 ? fullName : `${fullName} (${time})`;
  });
  const unitInRow = (row: number): string => {
    const at = headingRows[row];
    const column = at === undefined ? -1 : (cells[at] ?? []).indexOf(UNIT_HEADING);
    const shown = column < 0 ? null : valueAt(sheet, { row, column });
    return typeof shown === "string" ? shown : "";
  };

  return {
    at: ({ row, column }) => {
      // The first column names the row.
      if (column === 0 || headingRows[row] === row || rowNames[row] === undefined) return undefined;
      const whole = headingAt(row, column);
      const words = whole.replace(IN_BRACKETS, "");
      const inBrackets = IN_BRACKETS.exec(`${whole || rowNames[row]}`)?.[1] ?? "";
      return {
        sheet: name,
        row: rowNames[row],
        heading: words,
        unit: IN_UNIT_OF_ROW.includes(words) ? unitInRow(row) : inBrackets,
      };
    },
  };
};

const labelsKnown = new WeakMap<SheetContents, Labels>();

/** Labels of every sheet, each made when it is first asked for. */
export const labelsIn =
  ({ sheets }: Contents): ((sheet: string) => Labels | undefined) =>
  (name) => {
    const sheet = sheets.get(name);
    if (!sheet) return undefined;
    const labels = labelsKnown.get(sheet) ?? labelsOf(name, sheet);
    labelsKnown.set(sheet, labels);
    return labels;
  };
