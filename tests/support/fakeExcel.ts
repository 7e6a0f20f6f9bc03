import { a1, readArea, sheetPrefix, type Area } from "../../src/workbook/address";
import type { ExcelEntry } from "../../src/hosts/excel/ranges/excelEntry";
import { fakeBlock, fakeTable } from "./fakeBlock";
import { placeOf } from "./place";

/** What the stand-in keeps of a cell. */
export interface FakeCell {
  formula?: string | number;
  /** What a formula shows; the stand-in calculates nothing. */
  shows?: string | number;
  numberFormat?: string;
  choices?: string;
  choicesAlert?: string;
  fill?: string;
}

/** A shape or picture: how large it is, and where it lies, in points. */
export interface FakeShape {
  readonly id: string;
  width: number;
  height: number;
  left: number;
  top: number;
}

export const fakeShape = (
  id: string,
  size: { width: number; height: number } = { width: 60, height: 40 },
) => ({
  id,
  ...size,
  left: 0,
  top: 0,
});

export interface FakeSheet {
  readonly id: string;
  readonly name: string;
  readonly cells: Map<string, FakeCell>;
  frozenRows: number;
  print: object;
  /** Addresses. */
  merged: string[];
  hiddenRows: number[];
  isProtected: boolean;
  isFiltered: boolean;
  /** Shapes and pictures that lie on it. */
  shapes: FakeShape[];
  tables: { name: string; address: string; isFiltered?: boolean; showTotals?: boolean }[];
  /** Names that only this sheet knows, with their formulas. */
  names: Record<string, string>;
}

const newSheet = (id: string, name: string): FakeSheet => ({
  id,
  name,
  cells: new Map(),
  frozenRows: 0,
  print: {},
  merged: [],
  hiddenRows: [],
  isProtected: false,
  isFiltered: false,
  shapes: [],
  tables: [],
  names: {},
});

/** A workbook's state, and what makes it fail. */
export interface FakeWorkbook {
  readonly sheets: FakeSheet[];
  readonly names: Map<string, string>;
  active: string;
  /** The selected cell of the sheet in front. */
  selected: { rowIndex: number; columnIndex: number };
  /** The selected cells, where they are more than that one. */
  selectedArea?: string;
  /** Calculations that were asked for. */
  calculations: string[];
  /** How often the stand-in was asked to sync. */
  syncs: number;
  /** What is told of changes; a test tells. */
  readonly handlers: Set<() => unknown>;
  /** The most cells whose contents one sync has read. */
  mostCellsRead: number;
  /** Called while Excel is away carrying out what was queued. */
  onSync?: () => void;
  /** How many operations a run carries out before it fails; undefined: none fails. */
  failAfter: number | undefined;
}

export const fakeWorkbook = (...sheetNames: string[]): FakeWorkbook => ({
  sheets: sheetNames.map((name, index) => newSheet(`before-${index}`, name)),
  names: new Map(),
  active: sheetNames[0] ?? "",
  selected: { rowIndex: 0, columnIndex: 0 },
  failAfter: undefined,
  calculations: [],
  syncs: 0,
  mostCellsRead: 0,
  handlers: new Set(),
});

/** Adds members to an object and leaves its accessors as they are. */
const withMembers = <A extends object, B extends object>(target: A, members: B): A & B =>
  Object.defineProperties(target, Object.getOwnPropertyDescriptors(members)) as A & B;

/**
 * A stand-in for Office.js with its two habits that matter: writes wait in a queue until `sync`, and carry out up to the
 * one that fails; a property is readable only after `load` and `sync`.
 */
export const fakeExcel = (workbook: FakeWorkbook): ExcelEntry => {
  let ids = 0;
  type Batch = (context: unknown) => Promise<unknown>;
  const run = async (...given: [Batch] | [context: unknown, Batch]): Promise<unknown> => {
    if (given.length === 2) return given[1](given[0]);
    const [batch] = given;
    let queue: (() => void)[] = [];
    let cellsRead = 0;
    const noteRead = (cells: number): void => {
      cellsRead += cells;
      workbook.mostCellsRead = Math.max(workbook.mostCellsRead, cellsRead);
    };
    const later = (operation: () => void): void => {
      queue.push(operation);
    };
    const sync = async (): Promise<void> => {
      workbook.syncs++;
      if (workbook.onSync) {
        // Excel answers later, so that the pane has time to paint.
        await new Promise((resolve) => setTimeout(resolve));
        workbook.onSync();
      }
      const operations = queue;
      queue = [];
      cellsRead = 0;
      for (const operation of operations) {
        if (workbook.failAfter === 0) {
          workbook.failAfter = undefined;
          throw new Error("the stand-in failed as it was told to");
        }
        if (workbook.failAfter !== undefined) workbook.failAfter--;
        operation();
      }
    };

    const loadable = <T>(read: () => T[]): { items: T[]; load(): void } => {
      let loaded: T[] | undefined;
      return {
        load: () => {
          later(() => {
            loaded = read();
          });
        },
        get items(): T[] {
          if (!loaded) throw new Error("items were read before load and sync");
          return loaded;
        },
      };
    };

    /** Properties that may be read only after `load` and `sync`. */
    const loadedOnSync = <T extends object>(
      names: readonly (keyof T & string)[],
      read: (asked: string) => T | undefined,
    ) => {
      let values: T | undefined;
      let isNullObject: boolean | undefined;
      const target = {
        load: (asked = "") => {
          later(() => {
            values = read(asked);
            isNullObject = values === undefined;
          });
        },
        get isNullObject(): boolean | undefined {
          return isNullObject;
        },
      };
      for (const name of names)
        Object.defineProperty(target, name, {
          enumerable: true,
          get: () => {
            if (values?.[name] === undefined) throw new Error(`${name} was read before load and sync`);
            return values[name];
          },
        });
      return target;
    };

    const waiting = { later, loadedOnSync, noteRead };
    /** The block of a sheet that is used, by what was written into it. */
    const usedArea = (sheet: FakeSheet): Area | undefined => {
      const places = [...sheet.cells.keys()].map(placeOf);
      if (places.length === 0) return undefined;
      const [rows, columns] = [places.map(({ row }) => row), places.map(({ column }) => column)];
      return {
        from: { row: Math.min(...rows), column: Math.min(...columns) },
        to: { row: Math.max(...rows), column: Math.max(...columns) },
      };
    };

    const rangeOf = (sheet: () => FakeSheet, address: string): unknown => {
      const change = (edit: (cell: FakeCell) => void): void => {
        later(() => {
          if (sheet().isProtected) throw new Error("AccessDenied: the sheet is protected");
          const cells = sheet().cells;
          const cell = cells.get(address) ?? {};
          edit(cell);
          cells.set(address, cell);
        });
      };
      return withMembers(
        loadedOnSync(["left", "top"], () => ({ left: 100, top: 50 })),
        {
          address,
          sheetName: () => sheet().name,
          select: () => {
            later(() => (workbook.active = sheet().name));
          },
          set formulas([[formula]]: [[string | number]]) {
            // Excel keeps a formula that is written into a cell of text format as text.
            change((cell) => {
              const becomesText = cell.numberFormat === "@" && String(formula).startsWith("=");
              cell.formula = becomesText ? `'${formula}` : formula;
            });
          },
          set numberFormat([[format]]: [[string]]) {
            change((cell) => (cell.numberFormat = format));
          },
          format: {
            font: {},
            fill: {
              set color(fill: string) {
                change((cell) => (cell.fill = fill));
              },
            },
            borders: { getItem: () => ({}) },
          },
          dataValidation: {
            set rule({ list }: { list: { source: string } }) {
              change((cell) => (cell.choices = list.source));
            },
            set errorAlert({ style }: { style: string }) {
              change((cell) => (cell.choicesAlert = style));
            },
          },
        },
      );
    };

    const shapeProxy = (sheet: () => FakeSheet, id: () => string): unknown => {
      const found = (): FakeShape => {
        const shape = sheet().shapes.find((each) => each.id === id());
        if (!shape) throw new Error(`ItemNotFound: ${id()}`);
        return shape;
      };
      return withMembers(
        loadedOnSync(["id"], () => ({ id: id() })),
        {
          set left(points: number) {
            later(() => (found().left = points));
          },
          set top(points: number) {
            later(() => (found().top = points));
          },
          copyTo: (destination: { sheet(): FakeSheet }) => {
            const copyId = `copied-${ids++}`;
            later(() => {
              destination.sheet().shapes.push({ ...found(), id: copyId });
            });
            return shapeProxy(destination.sheet, () => copyId);
          },
        },
      );
    };

    const sheetProxy = (sheet: () => FakeSheet): unknown => ({
      sheet,
      get id() {
        return sheet().id;
      },
      get name() {
        return sheet().name;
      },
      getRange: (address: string) => rangeOf(sheet, address),
      load: () => undefined,
      getUsedRangeOrNullObject: () => fakeBlock(waiting, sheet, () => usedArea(sheet())),
      getRangeByIndexes: (row: number, column: number, rows: number, columns: number) =>
        fakeBlock(waiting, sheet, () => ({
          from: { row, column },
          to: { row: row + rows - 1, column: column + columns - 1 },
        })),
      protection: withMembers(
        loadedOnSync(["protected"], () => ({ protected: sheet().isProtected })),
        {
          protect: () => {
            later(() => (sheet().isProtected = true));
          },
        },
      ),
      names: loadable(() =>
        Object.entries(sheet().names).map(([each, formula]) => ({ name: each, formula })),
      ),
      shapes: withMembers(
        loadable(() =>
          sheet().shapes.map((shape) => ({
            id: shape.id,
            width: shape.width,
            height: shape.height,
            delete: () => {
              later(() => {
                sheet().shapes = sheet().shapes.filter(({ id }) => id !== shape.id);
              });
            },
          })),
        ),
        { getItem: (id: string) => shapeProxy(sheet, () => id) },
      ),
      autoFilter: loadedOnSync(["isDataFiltered"], () => ({ isDataFiltered: sheet().isFiltered })),
      get pageLayout() {
        return {
          set orientation(orientation: string) {
            later(() => (sheet().print = { ...sheet().print, orientation }));
          },
          set zoom(zoom: object) {
            later(() => (sheet().print = { ...sheet().print, zoom }));
          },
        };
      },
      freezePanes: {
        freezeRows: (rows: number) => {
          later(() => (sheet().frozenRows = rows));
        },
      },
      activate: () => {
        later(() => (workbook.active = sheet().name));
      },
      delete: () => {
        later(() => {
          const gone = workbook.sheets.indexOf(sheet());
          const wasInFront = workbook.active === sheet().name;
          workbook.sheets.splice(gone, 1);
          // Another comes to the front: the next, or the last.
          if (wasInFront) workbook.active = (workbook.sheets[gone] ?? workbook.sheets.at(-1))?.name ?? "";
        });
      },
    });

    const sheetNamed = (name: string): FakeSheet => {
      const found = workbook.sheets.find((sheet) => sheet.name === name || sheet.id === name);
      if (!found) throw new Error(`ItemNotFound: ${name}`);
      return found;
    };

    const worksheets = withMembers(
      loadable(() => workbook.sheets.map((sheet) => sheetProxy(() => sheet))),
      {
        add: (name: string) => {
          later(() => {
            if (workbook.sheets.some((sheet) => sheet.name === name))
              throw new Error(`ItemAlreadyExists: ${name}`);
            workbook.sheets.push(newSheet(`added-${ids++}`, name));
          });
          return sheetProxy(() => sheetNamed(name));
        },
        getItem: (name: string) => sheetProxy(() => sheetNamed(name)),
        getItemOrNullObject: (name: string) => {
          const isThere = (): boolean =>
            workbook.sheets.some((sheet) => sheet.name === name || sheet.id === name);
          return withMembers(sheetProxy(() => sheetNamed(name)) as object, {
            get isNullObject() {
              return !isThere();
            },
          });
        },
        getActiveWorksheet: () => sheetProxy(() => sheetNamed(workbook.active)),
      },
    );

    const names = withMembers(
      loadable(() =>
        [...workbook.names.keys()].map((name) => ({
          name,
          formula: `=${workbook.names.get(name)?.replace(/^(.*)!/, (_, sheet: string) => sheetPrefix(sheet))}`,
          delete: () => {
            later(() => {
              workbook.names.delete(name);
            });
          },
        })),
      ),
      {
        getItemOrNullObject: (name: string) => ({
          get isNullObject() {
            return !workbook.names.has(name);
          },
          getRangeOrNullObject: () => {
            const [sheetName = "", range = ""] = (workbook.names.get(name) ?? "").split("!");
            const sheet = (): FakeSheet => sheetNamed(sheetName);
            const isThere = workbook.sheets.some((each) => each.name === sheetName);
            return withMembers(
              fakeBlock(waiting, sheet, () => (isThere ? readArea(range.replaceAll("$", "")) : undefined)),
              { worksheet: sheetProxy(sheet) },
            );
          },
        }),
        add: (name: string, range: { address: string; sheetName(): string }) => {
          later(() => {
            if (workbook.names.has(name)) throw new Error(`ItemAlreadyExists: ${name}`);
            workbook.names.set(name, `${range.sheetName()}!${range.address}`);
          });
        },
      },
    );

    const application = {
      suspendScreenUpdatingUntilNextSync: () => undefined,
      calculate: (type: string) => {
        later(() => workbook.calculations.push(type));
      },
    };
    const active = () => sheetNamed(workbook.active);
    const getSelectedRange = () =>
      fakeBlock(waiting, active, () =>
        readArea(
          workbook.selectedArea ??
            a1({ row: workbook.selected.rowIndex, column: workbook.selected.columnIndex }),
        ),
      );
    const tables = {
      getItem: (name: string) =>
        fakeTable(
          waiting,
          () =>
            workbook.sheets.find((sheet) => sheet.tables.some((table) => table.name === name)) ?? active(),
          name,
        ),
    };
    const getActiveCell = () => loadedOnSync(["rowIndex", "columnIndex"], () => workbook.selected);
    const event = {
      add: (handler: () => unknown) => {
        // As in Excel, each is added by itself, even where it is the same function.
        const own = (): unknown => handler();
        later(() => workbook.handlers.add(own));
        return {
          remove: () => {
            later(() => workbook.handlers.delete(own));
          },
        };
      },
    };
    return batch({
      sync,
      workbook: {
        worksheets: withMembers(worksheets, { onChanged: event, onCalculated: event, onActivated: event }),
        names,
        application,
        tables,
        getActiveCell,
        getSelectedRange,
        onSelectionChanged: event,
      },
    });
  };
  return { run } as unknown as ExcelEntry;
};
