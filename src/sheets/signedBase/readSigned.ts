import { isBlank } from "../../../shared/cell";
import { InputError } from "../../../shared/inputError";
import { readArea, type Area } from "../address";
import { formulaAt, shownAt, type Contents, type SheetContents } from "../contents";
import { readOrder, type ReadOrder } from "../orderSheet/readOrder";
import { onlyWithin, sealNow, type SealedBlock } from "../sealedBlock";
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
  readonly sealed: SealedBlock;
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

/** The block that a sheet's seal covers, by the formula beside it; rows that were inserted have moved it. */
const sealedArea = (sheet: SheetContents): Area | undefined => {
  const formula = formulaAt(sheet, { row: SEAL_ROWS.now, column: VALUE_COLUMN });
  const block = /\((\$?[A-Z]+\$?\d+:\$?[A-Z]+\$?\d+)\)$/.exec(formula)?.[1];
  return block === undefined ? undefined : readArea(block);
};

/** Reads a signed sheet, and refuses one that was edited since. */
export const readSigned = ({ sheets }: Contents, name: string): Signed => {
  const sheet = sheets.get(name);
  if (!sheet || !isSigned(sheet)) throw new InputError(`There is no signed sheet "${name}" in the workbook.`);
  const area = sealedArea(sheet);
  const seal = area && sealNow(sheet, area);
  if (!area || seal === undefined || seal !== shownAt(sheet, { row: SEAL_ROWS.signed, column: VALUE_COLUMN }))
    throw new InputError(
      `"${name}" is not as it was signed: its seal doesn't fit its cells any more. Nothing was written.`,
    );
  const inSeal = onlyWithin(sheet, area);
  return {
    sheet: name,
    job: factOn(inSeal, "job"),
    from: factOn(inSeal, "from"),
    order: readOrder(name, inSeal),
    measures: readMeasures(inSeal),
    sealed: { sheet: name, area, seal },
  };
};
