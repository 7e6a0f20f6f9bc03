import type { CellAddress } from "../../workbook/address";
import { parseA1 } from "../book/a1References";
import { FileError } from "../book/fileError";
import { LIMITS } from "../book/limits";
import { shiftFormula } from "../../workbook/formulas/shiftFormula";
import { childOf, childrenOf, numberAttribute, type XmlElement } from "../xml/xml";

export interface RowElement {
  readonly row: number;
  readonly element: XmlElement;
}

/** A cell's element and its address. */
export interface CellElement extends CellAddress {
  readonly element: XmlElement;
}

/** A cell's key in a map. */
export const addressKey = ({ row, column }: CellAddress): string => `${row},${column}`;

/** Rows and cells may leave out their reference (`r`); then they follow the one before. */
export const rowElements = (sheetData: XmlElement | undefined): RowElement[] => {
  let next = 0;
  return childrenOf(sheetData, "row").map((element) => {
    const row = (numberAttribute(element, "r") ?? next + 1) - 1;
    next = row + 1;
    return { row, element };
  });
};

export const cellElements = ({ row, element }: RowElement): CellElement[] => {
  let next = 0;
  return childrenOf(element, "c").map((cell) => {
    const column = parseA1(cell.attributes.get("r") ?? "")?.column ?? next;
    next = column + 1;
    return { row, column, element: cell };
  });
};

/** All the cells of a sheet. */
export const allCellElements = (sheet: XmlElement): CellElement[] => {
  const cells = rowElements(childOf(sheet, "sheetData")).flatMap(cellElements);
  if (cells.length > LIMITS.cells)
    throw new FileError(
      `A sheet of the file has ${cells.length} cells, more than the limit of ${LIMITS.cells}.`,
    );
  return cells;
};

/** The index of a cell's shared formula; undefined where a cell has its own. */
export const sharedNumber = ({ element }: CellElement): string | undefined => {
  const formula = childOf(element, "f");
  return formula?.attributes.get("t") === "shared" ? formula.attributes.get("si") : undefined;
};

/** Reads the formulas of a sheet's cells as stored, with shared formulas expanded. */
export const formulaReader = (cells: readonly CellElement[]): ((cell: CellElement) => string | undefined) => {
  const masters = new Map<string, CellElement>();
  for (const cell of cells) {
    const number = sharedNumber(cell);
    if (number !== undefined && childOf(cell.element, "f")?.text) masters.set(number, cell);
  }
  return (cell) => {
    const formula = childOf(cell.element, "f");
    // A what-if data table has no formula that could be typed.
    if (!formula || formula.attributes.get("t") === "dataTable") return undefined;
    if (formula.text !== "") return formula.text;
    const master = masters.get(sharedNumber(cell) ?? "");
    const text = childOf(master?.element, "f")?.text;
    return master && text
      ? shiftFormula(text, cell.row - master.row, cell.column - master.column)
      : undefined;
  };
};
