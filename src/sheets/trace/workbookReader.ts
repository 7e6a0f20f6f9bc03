import type { Cell } from "../../../shared/cell";
import { highest } from "../../../shared/highest";
import type { CellAddress } from "../../workbook/address";
import { valueAt, type Contents, type SheetContents } from "../../workbook/contents";

/** A sheet whose cells are read one at a time, so that a host doesn't read all of them to follow one formula. */
export interface SheetReader {
  /** Rows and columns in use. */
  readonly rowCount: number;
  readonly columnCount: number;
  valueAt(cell: CellAddress): Cell;
}

export interface WorkbookReader {
  sheet(name: string): SheetReader | undefined;
  /** What a defined name stands for, such as `'Panel'!$B$4`, in any letter case. */
  nameTarget(name: string): string | undefined;
}

const sheetReader = (contents: SheetContents): SheetReader => ({
  rowCount: contents.cells.length,
  columnCount: highest(
    contents.cells.map(({ length }) => length),
    0,
  ),
  valueAt: (cell) => valueAt(contents, cell),
});

export const workbookReader = (
  readSheet: (name: string) => SheetReader | undefined,
  targets: Iterable<readonly [name: string, target: string]>,
): WorkbookReader => {
  const sheets = new Map<string, SheetReader | undefined>();
  const byName = new Map([...targets].map(([name, target]) => [name.toLowerCase(), target]));
  return {
    sheet: (name) => {
      if (!sheets.has(name)) sheets.set(name, readSheet(name));
      return sheets.get(name);
    },
    nameTarget: (name) => byName.get(name.toLowerCase()),
  };
};

const contentsReaders = new WeakMap<Contents, WorkbookReader>();

export const contentsReader = (contents: Contents): WorkbookReader => {
  const { sheets, targets } = contents;
  const reader =
    contentsReaders.get(contents) ??
    workbookReader((name) => {
      const sheet = sheets.get(name);
      return sheet && sheetReader(sheet);
    }, targets);
  contentsReaders.set(contents, reader);
  return reader;
};
