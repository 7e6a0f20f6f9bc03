import { CellError, isBlank } from "../../../shared/cell";
import type { CellAddress } from "../../workbook/address";
import { formulaAt, valueAt, type Contents, type SheetContents } from "../../workbook/contents";
import type { SheetCellAddress } from "../../workbook/address";

/** What tells a measurement from all others: by words, never by rows, so that it is found again where rows were inserted. */
export interface MeasurementKey {
  readonly sheet: string;
  /** What its row is called: `Plane B`, `exposed width`. */
  readonly row: string;
  /** The heading of its column, without its unit; empty text where there is none. */
  readonly heading: string;
}

export interface Measurement extends MeasurementKey {
  readonly unit: string;
  readonly value: string | number | boolean;
  readonly kind: "input" | "result";
}

export const measurementKey = ({ sheet, row, heading }: MeasurementKey): string =>
  [sheet, row, heading].join("\n").toLowerCase();

/** Columns whose unit stands in the row, under this heading. */
const UNIT_HEADING = "Unit";
const IN_UNIT_OF_ROW: readonly string[] = ["Value", "In use", "Needed", "With waste"];

const IN_BRACKETS = / ?\(([^()]*)\)$/;

/** How the cells of one sheet are called. */
export interface Labels {
  at(place: CellAddress): (MeasurementKey & { readonly unit: string }) | undefined;
}

/** Names that are too short to tell what they name get their column's heading before them: `Plane B`, `Side 3`. */
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

  /** Three typed texts or more from the first column on, nothing but texts, and above them no more than a title. */
  const isHeading = (row: number): boolean =>
    [0, 1, 2].every((column) => isText(row, column)) &&
    filledIn(row).every((column) => isText(row, column)) &&
    [1, 2].every((column) => !filledIn(row - 1).includes(column));
  /** A title or a note: a text on its own. */
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

  // Rows of one table that bear the same name are told apart by their order.
  const times = new Map<string, number>();
  const rowNames = cells.map((_, row) => {
    const shown = valueAt(sheet, { row, column: 0 });
    if (isBlank(shown) || shown instanceof CellError) return `row ${row + 1}`;
    const bare = String(shown);
    const called =
      bare.length > SHORT_NAME ? bare : `${headingAt(row, 0).replace(IN_BRACKETS, "")} ${bare}`.trim();
    const key = `${headingRows[row]} ${called.toLowerCase()}`;
    const time = (times.get(key) ?? 0) + 1;
    times.set(key, time);
    return time === 1 ? called : `${called} (${time})`;
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

/** Labels of every sheet, each worked out when it is first asked for. */
export const labelsIn =
  ({ sheets }: Contents): ((sheet: string) => Labels | undefined) =>
  (name) => {
    const sheet = sheets.get(name);
    if (!sheet) return undefined;
    const labels = labelsKnown.get(sheet) ?? labelsOf(name, sheet);
    labelsKnown.set(sheet, labels);
    return labels;
  };

const isNumberInTable = (sheet: SheetContents, place: CellAddress): boolean =>
  formulaAt(sheet, place) !== "" && typeof valueAt(sheet, place) === "number";

/**
 * Every measurement behind some cells: what they are worked out from, and the other numbers that the same sheets work out. Blank
 * cells are left out.
 */
export const measurementsBehind = (
  contents: Contents,
  traced: readonly SheetCellAddress[],
): Measurement[] => {
  const labelsFor = labelsIn(contents);
  const isTraced = new Set(traced.map(({ sheet, row, column }) => `${row},${column},${sheet}`));
  const touched = new Set(traced.map(({ sheet }) => sheet));
  return [...contents.sheets].flatMap(([name, sheet]) => {
    if (!touched.has(name)) return [];
    return sheet.cells.flatMap((line, row) =>
      line.flatMap((value, column): Measurement[] => {
        const place = { row, column };
        if (!isTraced.has(`${row},${column},${name}`) && !isNumberInTable(sheet, place)) return [];
        const label = labelsFor(name)?.at(place);
        if (!label || label.heading === UNIT_HEADING || isBlank(value) || value === null) return [];
        return [
          {
            ...label,
            // A code on its own would be an error again.
            value: value instanceof CellError ? `error ${value.code}` : value,
            kind: formulaAt(sheet, place) === "" ? "input" : "result",
          },
        ];
      }),
    );
  });
};
