import {
  a1,
  areaAddress,
  cellCount,
  overlap,
  addressesIn,
  readArea,
  type Area,
} from "../../src/workbook/address";
import type { FakeCell, FakeSheet } from "./fakeExcel";

/** How a stand-in waits: operations run at `sync`, and a property may be read only after `load` and `sync`. */
export interface Waiting {
  readonly later: (operation: () => void) => void;
  readonly loadedOnSync: <T extends object>(
    names: readonly (keyof T & string)[],
    read: (asked: string) => T | undefined,
  ) => object;
  /** Takes note that the contents of so many cells are read. */
  readonly noteRead: (cells: number) => void;
}

/** What a cell has of its own: what every blank cell has isn't kept. */
const kept = ({ formula = "", shows, numberFormat = "General", choices, fill }: FakeCell): FakeCell => ({
  ...(formula !== "" && { formula }),
  ...(shows !== undefined && formula !== "" && { shows }),
  ...(fill !== undefined && { fill }),
  ...(numberFormat !== "General" && { numberFormat }),
  ...(choices !== undefined && { choices }),
});

/** Changes a cell; one that has nothing left is gone, as in a real sheet. */
const changeCell = (sheet: FakeSheet, address: string, edit: (cell: FakeCell) => FakeCell): void => {
  const cell = kept(edit(sheet.cells.get(address) ?? {}));
  if (Object.keys(cell).length === 0) sheet.cells.delete(address);
  else sheet.cells.set(address, cell);
};

const rowsOf = ({ from, to }: Area): string[][] =>
  Array.from({ length: to.row - from.row + 1 }, (_, row) =>
    Array.from({ length: to.column - from.column + 1 }, (_each, column) =>
      a1({ row: from.row + row, column: from.column + column }),
    ),
  );

const formulaOf = (sheet: FakeSheet, address: string): string | number =>
  sheet.cells.get(address)?.formula ?? "";

/** What a cell shows: text without its apostrophe; the stand-in calculates nothing, so a formula shows as 0. */
const valueOf = (sheet: FakeSheet, address: string): string | number => {
  const { shows, formula = "" } = sheet.cells.get(address) ?? {};
  if (shows !== undefined) return shows;
  if (typeof formula === "number") return formula;
  return formula.startsWith("=") ? 0 : formula.replace(/^'/, "");
};

const PROPERTIES = [
  "values",
  "formulas",
  "numberFormat",
  "rowIndex",
  "columnIndex",
  "rowCount",
  "columnCount",
] as const;

interface Contents {
  readonly values: unknown[][];
  readonly formulas: unknown[][];
  readonly numberFormat: string[][];
}

const contentsOf = (sheet: FakeSheet, area: Area): Contents => {
  const addresses = rowsOf(area);
  return {
    values: addresses.map((line) => line.map((address) => valueOf(sheet, address))),
    formulas: addresses.map((line) => line.map((address) => formulaOf(sheet, address))),
    numberFormat: addresses.map((line) =>
      line.map((address) => sheet.cells.get(address)?.numberFormat ?? "General"),
    ),
  };
};

const placeAndSize = ({ from, to }: Area) => ({
  rowIndex: from.row,
  columnIndex: from.column,
  rowCount: to.row - from.row + 1,
  columnCount: to.column - from.column + 1,
});

type Loaded = Contents &
  ReturnType<typeof placeAndSize> & { load(asked: string): void; readonly isNullObject: boolean };

/** Merged areas are given by their whole address, and a filter's or table's area likewise. */
const mergedIn = (sheet: FakeSheet, area: Area): { address: string } | undefined => {
  const merged = sheet.merged.filter((each) => overlap(readArea(each), area));
  return merged.length > 0
    ? { address: merged.map((each) => `'${sheet.name}, so named'!${each}`).join(",") }
    : undefined;
};

/** A range of several cells. `area` is asked at `sync`: a used range isn't known before. */
export const fakeBlock = (waiting: Waiting, sheet: () => FakeSheet, area: () => Area | undefined): object => {
  const { later, loadedOnSync, noteRead } = waiting;
  const writable = (): Area => {
    const found = area();
    if (!found) throw new Error("ItemNotFound: the range is empty");
    if (sheet().isProtected) throw new Error("AccessDenied: the sheet is protected");
    return found;
  };
  const write = (matrix: unknown[][], edit: (cell: FakeCell, item: unknown) => FakeCell): void => {
    later(() => {
      rowsOf(writable()).forEach((line, row) => {
        line.forEach((address, column) => {
          const item = matrix[row]?.[column];
          if (item === undefined) throw new Error("InvalidArgument: the array is smaller than the range");
          if (item !== null) changeCell(sheet(), address, (cell) => edit(cell, item));
        });
      });
    });
  };

  const loaded = loadedOnSync<Partial<Loaded>>(PROPERTIES, (asked) => {
    const found = area();
    if (!found || !/values|formulas|numberFormat/.test(asked)) return found && placeAndSize(found);
    noteRead(cellCount(found));
    return { ...placeAndSize(found), ...contentsOf(sheet(), found) };
  }) as Loaded;
  return {
    get formulas() {
      return loaded.formulas;
    },
    get numberFormat() {
      return loaded.numberFormat;
    },
    load: (asked: string) => {
      loaded.load(asked);
    },
    get isNullObject() {
      return loaded.isNullObject;
    },
    get values() {
      return loaded.values;
    },
    get rowIndex() {
      return loaded.rowIndex;
    },
    get columnIndex() {
      return loaded.columnIndex;
    },
    get rowCount() {
      return loaded.rowCount;
    },
    get columnCount() {
      return loaded.columnCount;
    },
    area,
    set formulas(matrix: unknown[][]) {
      // Excel keeps a formula that is written into a cell of text format as text.
      write(matrix, (cell, item) => {
        const becomesText = cell.numberFormat === "@" && String(item).startsWith("=");
        return { ...cell, formula: becomesText ? `'${String(item)}` : (item as string | number) };
      });
    },
    set numberFormat(matrix: unknown[][]) {
      write(matrix, (cell, item) => ({ ...cell, numberFormat: item as string }));
    },
    copyFrom: (source: { area(): Area }, what: string) => {
      if (what !== "Formats") throw new Error("the stand-in copies formats only");
      later(() => {
        const [from, to] = [rowsOf(source.area()), rowsOf(writable())];
        to.forEach((line, row) => {
          line.forEach((address, column) => {
            const lines = from[row % from.length] ?? [];
            const { fill, numberFormat } = sheet().cells.get(lines[column % lines.length] ?? "") ?? {};
            changeCell(sheet(), address, (cell) => ({
              ...cell,
              ...(fill !== undefined && { fill }),
              ...(numberFormat !== undefined && { numberFormat }),
            }));
          });
        });
      });
    },
    clear: (what: string) => {
      if (what !== "Formats") throw new Error("the stand-in clears formats only");
      later(() => {
        for (const place of addressesIn(writable()))
          changeCell(sheet(), a1(place), (cell) => ({ ...cell, fill: undefined, numberFormat: undefined }));
      });
    },
    getCell: (row: number, column: number) =>
      fakeBlock(waiting, sheet, () => {
        const { from } = writable();
        const place = { row: from.row + row, column: from.column + column };
        return { from: place, to: place };
      }),
    getMergedAreasOrNullObject: () =>
      loadedOnSync(["address"], () => {
        const found = area();
        return found && mergedIn(sheet(), found);
      }),
    getUsedRangeOrNullObject: (valuesOnly: boolean) =>
      loadedOnSync(["address"], () => {
        const found = area();
        const used =
          found &&
          addressesIn(found)
            .map(a1)
            .filter((address) => {
              const cell = sheet().cells.get(address);
              return cell && (!valuesOnly || formulaOf(sheet(), address) !== "");
            });
        return found && used && used.length > 0 ? { address: areaAddress(found) } : undefined;
      }),
    getRowProperties: () => {
      const result: { value?: { rowHidden: boolean }[] } = {};
      later(() => {
        const { from, to } = writableOrThrow(area());
        result.value = Array.from({ length: to.row - from.row + 1 }, (_, index) => ({
          rowHidden: sheet().hiddenRows.includes(from.row + index),
        }));
      });
      return {
        get value() {
          if (!result.value) throw new Error("value was read before sync");
          return result.value;
        },
      };
    },
    getTables: () =>
      loadedOnSync(["items"], () => {
        const found = writableOrThrow(area());
        return {
          items: sheet()
            .tables.filter((table) => overlap(readArea(table.address), found))
            .map((table) => fakeTable(waiting, sheet, table.name)),
        };
      }),
  };
};

const writableOrThrow = (area: Area | undefined): Area => {
  if (!area) throw new Error("ItemNotFound: the range is empty");
  return area;
};

/** A table of Excel's, by its name. */
export const fakeTable = (waiting: Waiting, sheet: () => FakeSheet, name: string): object => {
  const found = () => {
    const table = sheet().tables.find((each) => each.name === name);
    if (!table) throw new Error(`ItemNotFound: ${name}`);
    return table;
  };
  return {
    name,
    showHeaders: true,
    showTotals: sheet().tables.find((each) => each.name === name)?.showTotals ?? false,
    getRange: () => fakeBlock(waiting, sheet, () => readArea(found().address)),
    autoFilter: waiting.loadedOnSync(["isDataFiltered"], () => ({
      isDataFiltered: found().isFiltered ?? false,
    })),
    resize: (range: { area(): Area }) => {
      waiting.later(() => {
        if (sheet().isProtected) throw new Error("AccessDenied: the sheet is protected");
        found().address = areaAddress(range.area());
      });
    },
  };
};
