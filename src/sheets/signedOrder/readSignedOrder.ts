import { isBlank } from "../../../shared/cell";
import { InputError } from "../../../shared/inputError";
import { readArea, type Area, type CellAddress } from "../../workbook/address";
import { formulaAt, valueAt, type Contents, type SheetContents } from "../../workbook/contents";
import { ORDER, ORDER_HEADINGS } from "../orderSheet/orderLayout";
import { readOrder, type ReadOrder } from "../orderSheet/readOrder";
import { onlyWithin, currentSeal, type SealedBlock } from "../sealedBlock";
import type { Measurement } from "../trace/measurements";
import {
  FACT_LABELS,
  MEASUREMENT_COLUMNS,
  MEASUREMENT_HEADINGS,
  SEAL_LABELS,
  VALUE_COLUMN,
} from "./signedOrderLayout";

/** A signed order as read from its sheet. */
export interface SignedOrder {
  readonly sheet: string;
  readonly job: string;
  /** The sheet of the order that was signed. */
  readonly from: string;
  readonly order: ReadOrder;
  readonly measurements: readonly Measurement[];
  readonly sealed: SealedBlock;
}

/** The row of a label above the order's headings (below them an item may have the same name); undefined where there is none. */
const rowOfLabel = ({ cells }: SheetContents, label: string): number | undefined => {
  const headings = cells.findIndex(([first]) => first === ORDER_HEADINGS[ORDER.item]);
  const row = cells.findIndex(([first]) => first === label);
  return row < 0 || (headings >= 0 && row > headings) ? undefined : row;
};

/** The cell beside a label. */
const besideLabel = (sheet: SheetContents, label: string): CellAddress | undefined => {
  const row = rowOfLabel(sheet, label);
  return row === undefined ? undefined : { row, column: VALUE_COLUMN };
};

/** Whether a sheet is a signed order: it has a label of the seal. One with missing labels was edited. */
export const isSigned = (sheet: SheetContents): boolean =>
  Object.values(SEAL_LABELS).some((label) => rowOfLabel(sheet, label) !== undefined);

const factOn = (sheet: SheetContents, fact: keyof typeof FACT_LABELS): string | undefined => {
  const place = besideLabel(sheet, FACT_LABELS[fact]);
  return place && String(valueAt(sheet, place) ?? "");
};

/** The sheet of the order that was signed, even if the signed sheet was edited; undefined for other sheets or where the label is gone. */
export const sourceSheetOf = ({ sheets }: Contents, name: string): string | undefined => {
  const sheet = sheets.get(name);
  return sheet && isSigned(sheet) ? factOn(sheet, "from") : undefined;
};

const readMeasures = ({ cells }: SheetContents): Measurement[] => {
  const head = cells.findIndex((line) =>
    MEASUREMENT_HEADINGS.every((heading, column) => line[column] === heading),
  );
  if (head < 0) return [];
  return cells.slice(head + 1).flatMap((line): Measurement[] => {
    const words = (column: keyof typeof MEASUREMENT_COLUMNS): string =>
      String(line[MEASUREMENT_COLUMNS[column]] ?? "");
    const value = line[MEASUREMENT_COLUMNS.value] ?? null;
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
  const place = besideLabel(sheet, SEAL_LABELS.now);
  const formula = place ? formulaAt(sheet, place) : "";
  const block = /\((\$?[A-Z]+\$?\d+:\$?[A-Z]+\$?\d+)\)$/.exec(formula)?.[1];
  return block === undefined ? undefined : readArea(block);
};

/** Reads a signed sheet, and refuses one that was edited since. */
export const readSignedOrder = ({ sheets }: Contents, name: string): SignedOrder => {
  const sheet = sheets.get(name);
  if (!sheet || !isSigned(sheet)) throw new InputError(`There is no signed sheet "${name}" in the workbook.`);
  const lost = Object.values(SEAL_LABELS).find((label) => rowOfLabel(sheet, label) === undefined);
  if (lost !== undefined)
    throw new InputError(
      `"${name}" was edited since it was signed: no cell of its first column says "${lost}" any more. Nothing was written.`,
    );
  const area = sealedArea(sheet);
  const seal = area && currentSeal(sheet, area);
  const signedAt = besideLabel(sheet, SEAL_LABELS.signed);
  if (!area || seal === undefined || !signedAt || seal !== valueAt(sheet, signedAt))
    throw new InputError(
      `"${name}" is not as it was signed: its seal doesn't fit its cells any more. Nothing was written.`,
    );
  const inSeal = onlyWithin(sheet, area);
  return {
    sheet: name,
    job: factOn(inSeal, "job") ?? "",
    from: factOn(inSeal, "from") ?? "",
    order: readOrder(name, inSeal),
    measurements: readMeasures(inSeal),
    sealed: { sheet: name, area, seal },
  };
};
