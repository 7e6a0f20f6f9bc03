import type { ExcelEntry } from "../../src/hosts/excel/excelHost";

/** What the stand-in keeps of a cell. */
export interface FakeCell {
  formula?: string | number;
  numberFormat?: string;
  choices?: string;
  fill?: string;
}

export interface FakeSheet {
  readonly id: string;
  readonly name: string;
  readonly cells: Map<string, FakeCell>;
  frozenRows: number;
}

/** A workbook's state, and what makes it fail. */
export interface FakeWorkbook {
  readonly sheets: FakeSheet[];
  readonly names: Map<string, string>;
  active: string;
  /** How many operations a run carries out before it fails; undefined: none fails. */
  failAfter: number | undefined;
}

export const fakeWorkbook = (...sheetNames: string[]): FakeWorkbook => ({
  sheets: sheetNames.map((name, index) => ({ id: `before-${index}`, name, cells: new Map(), frozenRows: 0 })),
  names: new Map(),
  active: sheetNames[0] ?? "",
  failAfter: undefined,
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
  const run = async (batch: (context: unknown) => Promise<unknown>): Promise<unknown> => {
    let queue: (() => void)[] = [];
    const later = (operation: () => void): void => {
      queue.push(operation);
    };
    const sync = (): Promise<void> => {
      const operations = queue;
      queue = [];
      for (const operation of operations) {
        if (workbook.failAfter === 0) {
          workbook.failAfter = undefined;
          return Promise.reject(new Error("the stand-in failed as it was told to"));
        }
        if (workbook.failAfter !== undefined) workbook.failAfter--;
        operation();
      }
      return Promise.resolve();
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

    const rangeOf = (sheet: () => FakeSheet, address: string): unknown => {
      const change = (edit: (cell: FakeCell) => void): void => {
        later(() => {
          const cells = sheet().cells;
          const cell = cells.get(address) ?? {};
          edit(cell);
          cells.set(address, cell);
        });
      };
      return {
        address,
        sheetName: () => sheet().name,
        set formulas([[formula]]: [[string | number]]) {
          change((cell) => (cell.formula = formula));
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
        },
      };
    };

    const sheetProxy = (sheet: () => FakeSheet): unknown => ({
      get id() {
        return sheet().id;
      },
      get name() {
        return sheet().name;
      },
      getRange: (address: string) => rangeOf(sheet, address),
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
          workbook.sheets.splice(workbook.sheets.indexOf(sheet()), 1);
        });
      },
    });

    const sheetNamed = (name: string): FakeSheet => {
      const found = workbook.sheets.find((sheet) => sheet.name === name);
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
            workbook.sheets.push({ id: `added-${ids++}`, name, cells: new Map(), frozenRows: 0 });
          });
          return sheetProxy(() => sheetNamed(name));
        },
        getItem: (name: string) => sheetProxy(() => sheetNamed(name)),
      },
    );

    const names = withMembers(
      loadable(() =>
        [...workbook.names.keys()].map((name) => ({
          name,
          delete: () => {
            later(() => {
              workbook.names.delete(name);
            });
          },
        })),
      ),
      {
        add: (name: string, range: { address: string; sheetName(): string }) => {
          later(() => {
            if (workbook.names.has(name)) throw new Error(`ItemAlreadyExists: ${name}`);
            workbook.names.set(name, `${range.sheetName()}!${range.address}`);
          });
        },
      },
    );

    const application = { suspendScreenUpdatingUntilNextSync: () => undefined };
    return batch({ sync, workbook: { worksheets, names, application } });
  };
  return { run } as unknown as ExcelEntry;
};
