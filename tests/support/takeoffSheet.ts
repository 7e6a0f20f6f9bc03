import { CellError, type Cell } from "../../shared/cell";
import { createHeadlessEngine, type HeadlessEngine } from "../../src/hosts/local/workbook/headless";
import { localCatalog } from "../../src/hosts/local/formulas/catalog";
import { a1 } from "../../src/workbook/address";
import type { TakeoffOptions } from "../../src/sheets/takeoff/takeoffOptions";
import { placeOf } from "./place";
import { takeoffPlan, USUAL_NAMES } from "../../src/sheets/newJob/takeoffPlan";

/** The workbook of the test that runs. */
let engine: HeadlessEngine | undefined;

const opened = (): HeadlessEngine => {
  if (!engine) throw new Error("no takeoff is open");
  return engine;
};

const SHEET = "Takeoff";

const at = (address: string, sheet = SHEET) => ({ sheet, ...placeOf(address) });

/** What a cell shows, by its address on one of the takeoff's sheets. */
export const shown = (address: string, sheet = SHEET): Cell => opened().getCell(at(address, sheet));

/** Opens a takeoff in the place of the one before. */
export const open = async (options: TakeoffOptions): Promise<void> => {
  engine?.dispose();
  engine = createHeadlessEngine(localCatalog, takeoffPlan(options, USUAL_NAMES));
  await opened().calculated();
};

type Typed = string | number | null;

/** Types into several cells, and waits for what comes of it. */
export const editAll = async (contents: Readonly<Record<string, Typed>>, sheet = SHEET): Promise<void> => {
  for (const [address, content] of Object.entries(contents)) opened().setCell(at(address, sheet), content);
  await opened().calculated();
};

export const edit = (address: string, content: Typed, sheet = SHEET): Promise<void> =>
  editAll({ [address]: content }, sheet);

/** The row, as a person reads it, of the first cell in column A that shows this text, at or below a row. */
export const rowOf = (label: string, from = 1): number => {
  for (let row = from; row < 200; row++) if (shown(`A${row}`) === label) return row;
  throw new Error(`no row is labeled ${label}`);
};

/** A row of the trim table: what a trim comes to. */
export const trimOf = (trim: string, column: string): Cell =>
  shown(`${column}${rowOf(trim, rowOf("5  Trim and its fasteners"))}`);
export const [RUNS, FEET, STOCKS, CLIPS, NAILS] = ["E", "F", "G", "H", "I"] as const;

export const orderRow = (item: string): number => {
  for (let row = 5; row < 60; row++) if (shown(`A${row}`, "Order") === item) return row;
  throw new Error(`nothing on the order is ${item}`);
};

/** A line of the order. */
export const ordered = (item: string, column: string): Cell => shown(`${column}${orderRow(item)}`, "Order");
export const [NEEDED, WITH_WASTE, TO_ORDER] = ["C", "E", "G"] as const;

export const errorsOn = (plan: ReturnType<typeof takeoffPlan>): string[] =>
  plan.sheets.flatMap(({ name, cells }) =>
    cells.flatMap((cell) => {
      const value = opened().getCell({ sheet: name, row: cell.row, column: cell.column });
      return value instanceof CellError ? [`${name}!${a1(cell)} ${value.code} ${value.message}`] : [];
    }),
  );
