import { isBlank } from "../../../shared/cell";
import { InputError } from "../../../shared/inputError";
import { sealOf } from "../../../shared/seal";
import { a1, readArea, sheetPrefix } from "../address";
import { formulaAt, shownAt, type Contents, type SheetContents } from "../contents";
import { readOrder, type ReadOrder } from "../orderSheet/readOrder";
import type { Measure } from "../trace/measures";
import { FACT_ROWS, MEASURE, MEASURE_HEADINGS, SEAL_LABELS, SEAL_ROWS, VALUE_COLUMN } from "./layout";

/** A signed sheet as it stands. */
export interface Signed {
  readonly sheet: string;
  readonly job: string;
  /** The sheet that it was taken from. */
  readonly from: string;
  readonly order: ReadOrder;
  readonly measures: readonly Measure[];
}

/** Whether a sheet is a signed one, by its seal. */
export const isSigned = (sheet: SheetContents): boolean =>
  shownAt(sheet, { row: SEAL_ROWS.signed, column: 0 }) === SEAL_LABELS.signed;

const factOn = (sheet: SheetContents, fact: keyof typeof FACT_ROWS): string =>
  String(shownAt(sheet, { row: FACT_ROWS[fact], column: VALUE_COLUMN }) ?? "");

/** The sheet that a signed one was taken from, edited or not; undefined for any other sheet. */
export const takenFrom = ({ sheets }: Contents, name: string): string | undefined => {
  const sheet = sheets.get(name);
  return sheet && isSigned(sheet) ? factOn(sheet, "from") : undefined;
};

/** The cell, as another sheet calls it, that says whether the sheet is as signed. */
export const statusCell = (sheet: string): string =>
  `${sheetPrefix(sheet)}${a1({ row: SEAL_ROWS.status, column: VALUE_COLUMN })}`;

const readMeasures = ({ cells }: SheetContents): Measure[] => {
  const head = cells.findIndex((line) =>
    MEASURE_HEADINGS.every((heading, column) => line[column] === heading),
  );
  if (head < 0) return [];
  return cells.slice(head + 1).flatMap((line): Measure[] => {
    const words = (column: keyof typeof MEASURE): string => String(line[MEASURE[column]] ?? "");
    const value = line[MEASURE.value] ?? null;
    const kind = words("kind");
    if (isBlank(value) || (kind !== "input" && kind !== "result")) return [];
    return [
      {
        sheet: words("sheet"),
        row: words("row"),
        heading: words("heading"),
        unit: words("unit"),
        value: typeof value === "number" ? value : String(value),
        kind,
      },
    ];
  });
};

/**
 * Whether the sealed cells still fit the seal. Worked out here and not read off the sheet: a function's result may not have come
 * yet, or may have been typed over.
 */
const isAsSigned = (sheet: SheetContents): boolean => {
  const formula = formulaAt(sheet, { row: SEAL_ROWS.now, column: VALUE_COLUMN });
  const block = /\((\$?[A-Z]+\$?\d+:\$?[A-Z]+\$?\d+)\)$/.exec(formula)?.[1];
  if (block === undefined) return false;
  const { from, to } = readArea(block);
  const cells = Array.from({ length: to.row - from.row + 1 }, (_, row) =>
    Array.from({ length: to.column - from.column + 1 }, (_each, column) =>
      shownAt(sheet, { row: from.row + row, column: from.column + column }),
    ),
  );
  return sealOf(cells) === shownAt(sheet, { row: SEAL_ROWS.signed, column: VALUE_COLUMN });
};

/** Reads a signed sheet, and refuses one that was edited since. */
export const readSigned = ({ sheets }: Contents, name: string): Signed => {
  const sheet = sheets.get(name);
  if (!sheet || !isSigned(sheet)) throw new InputError(`There is no signed sheet "${name}" in the workbook.`);
  if (!isAsSigned(sheet))
    throw new InputError(
      `"${name}" is not as it was signed: its seal doesn't fit its cells any more. Nothing was written.`,
    );
  return {
    sheet: name,
    job: factOn(sheet, "job"),
    from: factOn(sheet, "from"),
    order: readOrder(name, sheet),
    measures: readMeasures(sheet),
  };
};
