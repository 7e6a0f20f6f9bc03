import { a1, areaAddress, LAST_CELL } from "../../workbook/address";
import { fileStyleKey, type BookCell, type BookRowOrColumn, type BookSheet } from "../book/book";
import { parseRange } from "../book/a1References";
import { FileError } from "../book/fileError";
import { shownFormula } from "../formulas/storedFormula";
import { readCellValue } from "./cellValues";
import { readDropDowns } from "./readDropDowns";
import { allCellElements, formulaReader, rowElements, type CellElement } from "./sheetCells";
import { columnPx, columnPxOfDigits, rowPx } from "../styles/sizes";
import { childOf, childrenOf, flagAttribute, numberAttribute, type XmlElement } from "../xml/xml";

/** The most array formulas of several cells on a sheet. */
const MOST_ARRAY_FORMULAS = 2_000;

const styleKey = (element: XmlElement, attribute: string): { style?: string } => {
  const index = numberAttribute(element, attribute);
  return index === undefined ? {} : { style: fileStyleKey(index) };
};

const readColumns = (sheet: XmlElement): ReadonlyMap<number, BookRowOrColumn> => {
  const columns = new Map<number, BookRowOrColumn>();
  for (const element of childrenOf(childOf(sheet, "cols"), "col")) {
    const first = (numberAttribute(element, "min") ?? 1) - 1;
    const last = (numberAttribute(element, "max") ?? 1) - 1;
    const width = numberAttribute(element, "width");
    const line: BookRowOrColumn = {
      ...(width !== undefined && { sizePx: columnPx(width) }),
      ...(flagAttribute(element, "hidden") && { isHidden: true }),
      ...styleKey(element, "style"),
    };
    // A style to the sheet's last column is shown for 200 columns.
    const to =
      last >= LAST_CELL.column ? Math.min(first + 200, LAST_CELL.column) : Math.min(last, LAST_CELL.column);
    for (let column = first; column <= to; column++) columns.set(column, line);
  }
  return columns;
};

const readRows = (sheet: XmlElement): ReadonlyMap<number, BookRowOrColumn> => {
  const rows = new Map<number, BookRowOrColumn>();
  for (const { row, element } of rowElements(childOf(sheet, "sheetData"))) {
    const points = numberAttribute(element, "ht");
    const line: BookRowOrColumn = {
      ...(points !== undefined && { sizePx: rowPx(points) }),
      ...(flagAttribute(element, "hidden") && { isHidden: true }),
      ...(flagAttribute(element, "customFormat") && styleKey(element, "s")),
    };
    if (Object.keys(line).length > 0) rows.set(row, line);
  }
  return rows;
};

const readFrozen = (sheet: XmlElement): BookSheet["frozen"] => {
  const pane = childOf(childOf(childOf(sheet, "sheetViews"), "sheetView"), "pane");
  const isFrozen = ["frozen", "frozenSplit"].includes(pane?.attributes.get("state") ?? "");
  return {
    rows: isFrozen ? (numberAttribute(pane, "ySplit") ?? 0) : 0,
    columns: isFrozen ? (numberAttribute(pane, "xSplit") ?? 0) : 0,
  };
};

/** The addresses of cells filled by an array formula in another cell. */
const spilledCells = (cells: readonly CellElement[]): ReadonlySet<string> => {
  const spilled = new Set<string>();
  const ranges = cells.flatMap(({ row, column, element }) => {
    const formula = childOf(element, "f");
    const range =
      formula?.attributes.get("t") === "array" ? parseRange(formula.attributes.get("ref") ?? "") : undefined;
    return range && areaAddress(range) !== a1({ row, column })
      ? [{ ...range, own: a1({ row, column }) }]
      : [];
  });
  if (ranges.length > MOST_ARRAY_FORMULAS)
    throw new FileError(`A sheet of the file has more than ${MOST_ARRAY_FORMULAS} array formulas.`);
  for (const { from, to, own } of ranges)
    for (const each of cells)
      if (
        each.row >= from.row &&
        each.row <= to.row &&
        each.column >= from.column &&
        each.column <= to.column
      )
        if (a1(each) !== own) spilled.add(a1(each));
  return spilled;
};

/** A worksheet part as plain values. */
export const readSheet = (
  name: string,
  isHidden: boolean,
  sheet: XmlElement,
  sharedTexts: readonly string[],
): BookSheet => {
  const elements = allCellElements(sheet);
  const formulaIn = formulaReader(elements);
  const spilled = spilledCells(elements);
  const cells = new Map<number, Map<number, BookCell>>();
  for (const cell of elements) {
    const formula = formulaIn(cell);
    const row = cells.get(cell.row) ?? new Map<number, BookCell>();
    cells.set(cell.row, row);
    row.set(cell.column, {
      value: readCellValue(cell.element, sharedTexts),
      ...(formula !== undefined && { formula: shownFormula(formula) }),
      ...(spilled.has(a1(cell)) && { isSpilled: true }),
      ...styleKey(cell.element, "s"),
    });
  }
  const format = childOf(sheet, "sheetFormatPr");
  const defaultRow = numberAttribute(format, "defaultRowHeight");
  const defaultColumn = numberAttribute(format, "defaultColWidth");
  const defaultDigits = numberAttribute(format, "baseColWidth");
  return {
    name,
    isHidden,
    isProtected: flagAttribute(childOf(sheet, "sheetProtection"), "sheet") ?? false,
    cells,
    rows: readRows(sheet),
    columns: readColumns(sheet),
    ...(defaultRow !== undefined && { defaultRowPx: rowPx(defaultRow) }),
    defaultColumnPx:
      defaultColumn === undefined ? columnPxOfDigits(defaultDigits ?? 8) : columnPx(defaultColumn),
    merges: childrenOf(childOf(sheet, "mergeCells"), "mergeCell").map(
      ({ attributes }) => attributes.get("ref") ?? "",
    ),
    frozen: readFrozen(sheet),
    dropDowns: readDropDowns(sheet),
  };
};
