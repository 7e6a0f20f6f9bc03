import {
  BooleanNumber,
  CellValueType,
  DEFAULT_WORKSHEET_ROW_HEIGHT,
  LocaleType,
  type ICellData,
  type IWorkbookData,
  type IWorksheetData,
} from "@univerjs/core";
import { CellError } from "../../../../shared/cell";
import { highest } from "../../../../shared/highest";
import type { Book, BookCell, BookRowOrColumn, BookSheet } from "../../../xlsx/book/book";
import { parseRange } from "../../../xlsx/book/a1References";
import { rowPxOfFont } from "../../../xlsx/styles/sizes";
import { dropDownsResource, fileDropDownRules } from "../engine/dropDowns";
import { filePicturesResource, placedPictures, type PlacedPicture } from "../pictures/filePictures";
import { fileMetadataConfig } from "../engine/fileMetadata";

/** Blank rows and columns after the file's content, to work in. */
const SPARE_ROWS = 60;
const SPARE_COLUMNS = 10;
const FEWEST_COLUMNS = 26;

const valueData = ({ value }: BookCell): ICellData => {
  if (value === null) return {};
  if (value instanceof CellError) return { v: value.code, t: CellValueType.STRING };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { v: value, t: typeof value === "number" ? CellValueType.NUMBER : CellValueType.STRING };
};

/** A spilled value is left out: the formula that spills it gives it again. */
const cellData = (cell: BookCell): ICellData => ({
  ...(cell.isSpilled ? {} : valueData(cell)),
  ...(cell.formula !== undefined && { f: cell.formula }),
  ...(cell.style !== undefined && { s: cell.style }),
});

const lineData = ({ isHidden, style }: BookRowOrColumn) => ({
  ...(isHidden && { hd: BooleanNumber.TRUE }),
  ...(style !== undefined && { s: style }),
});

/** Row heights fitted to the largest font, for rows whose height the file doesn't state. */
const fittedRowHeights = (
  { cells, rows, defaultRowPx = DEFAULT_WORKSHEET_ROW_HEIGHT }: BookSheet,
  { styles }: Book,
): ReadonlyMap<number, number> =>
  new Map(
    [...cells].flatMap(([row, inRow]): [number, number][] => {
      if (rows.get(row)?.sizePx !== undefined) return [];
      let points = 0;
      for (const { style = "" } of inRow.values()) points = Math.max(points, styles.get(style)?.fs ?? 0);
      const heightPx = rowPxOfFont(points);
      return heightPx > defaultRowPx ? [[row, heightPx]] : [];
    }),
  );

const rowData = (sheet: BookSheet, book: Book): IWorksheetData["rowData"] => {
  const fitted = fittedRowHeights(sheet, book);
  return Object.fromEntries(
    [...new Set([...sheet.rows.keys(), ...fitted.keys()])].map((row) => {
      const line = sheet.rows.get(row) ?? {};
      return [
        row,
        {
          ...(line.sizePx !== undefined && { h: line.sizePx, ia: BooleanNumber.FALSE }),
          // The engine marks heights that it fitted itself the same way; nobody chose them, so they aren't saved.
          ...(fitted.has(row) && { ah: fitted.get(row), ia: BooleanNumber.TRUE }),
          ...lineData(line),
        },
      ];
    }),
  );
};

const sheetData = (id: string, sheet: BookSheet, book: Book): Partial<IWorksheetData> => {
  let lastColumn = highest(sheet.columns.keys(), -1);
  for (const cells of sheet.cells.values()) lastColumn = highest(cells.keys(), lastColumn);
  const lastRow = highest(sheet.cells.keys(), highest(sheet.rows.keys(), -1));
  const { rows, columns } = sheet.frozen;
  return {
    id,
    name: sheet.name,
    hidden: sheet.isHidden ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    ...fileMetadataConfig(sheet, book.unlockedStyles ?? []),
    cellData: Object.fromEntries(
      [...sheet.cells].map(([row, cells]) => [
        row,
        Object.fromEntries([...cells].map(([column, cell]) => [column, cellData(cell)])),
      ]),
    ),
    rowCount: lastRow + 1 + SPARE_ROWS,
    columnCount: Math.max(FEWEST_COLUMNS, lastColumn + 1 + SPARE_COLUMNS),
    rowData: rowData(sheet, book),
    columnData: Object.fromEntries(
      [...sheet.columns].map(([column, line]) => [
        column,
        { ...(line.sizePx !== undefined && { w: line.sizePx }), ...lineData(line) },
      ]),
    ),
    ...(sheet.defaultRowPx !== undefined && { defaultRowHeight: sheet.defaultRowPx }),
    ...(sheet.defaultColumnPx !== undefined && { defaultColumnWidth: sheet.defaultColumnPx }),
    mergeData: sheet.merges.flatMap((text) => {
      const range = parseRange(text);
      return range
        ? [
            {
              startRow: range.from.row,
              endRow: range.to.row,
              startColumn: range.from.column,
              endColumn: range.to.column,
            },
          ]
        : [];
    }),
    freeze: {
      xSplit: columns,
      ySplit: rows,
      startRow: rows > 0 ? rows : -1,
      startColumn: columns > 0 ? columns : -1,
    },
  };
};

/** Enlarges a sheet so that it reaches as far as its pictures. */
const withRoomFor = (
  data: Partial<IWorksheetData>,
  pictures: readonly PlacedPicture[],
): Partial<IWorksheetData> => ({
  ...data,
  rowCount: highest(
    pictures.map(({ to }) => to.row + 1),
    data.rowCount ?? 0,
  ),
  columnCount: highest(
    pictures.map(({ to }) => to.column + 1),
    data.columnCount ?? 0,
  ),
});

const sheetId = (index: number): string => `sheet-${index + 1}`;

/** The engine's resource for defined names. The keys are numbers, because a name may be any word. */
const namesResource = ({ names, sheets }: Book) => ({
  name: "SHEET_DEFINED_NAME_PLUGIN",
  data: JSON.stringify(
    Object.fromEntries(
      names.map(({ name, sheet, target }, index) => [
        `name-${index}`,
        {
          id: `name-${index}`,
          name,
          formulaOrRefString: target,
          comment: "",
          ...(sheet !== undefined && {
            localSheetId: sheetId(sheets.findIndex((each) => each.name === sheet)),
          }),
        },
      ]),
    ),
  ),
});

/** A book as a snapshot for the engine. */
export const bookSnapshot = (id: string, book: Book): Partial<IWorkbookData> => {
  const sheets = book.sheets.map((sheet, index) => {
    const data = sheetData(sheetId(index), sheet, book);
    const pictures = placedPictures(sheet, data);
    return { id: sheetId(index), sheet, data: withRoomFor(data, pictures), pictures };
  });
  return {
    id,
    name: "Gablewright",
    locale: LocaleType.EN_US,
    styles: Object.fromEntries(book.styles),
    sheetOrder: sheets.map((each) => each.id),
    sheets: Object.fromEntries(sheets.map((each) => [each.id, each.data])),
    resources: [
      namesResource(book),
      dropDownsResource(
        Object.fromEntries(sheets.map((each) => [each.id, fileDropDownRules(each.sheet, each.data)])),
      ),
      filePicturesResource(id, Object.fromEntries(sheets.map((each) => [each.id, each.pictures]))),
    ],
  };
};
