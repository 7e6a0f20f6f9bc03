import { InputError } from "../../../shared/inputError";
import type { Added, Host } from "../../workbook/host";
import type { Contents } from "../../workbook/contents";
import { ORDER } from "../orderSheet/orderLayout";
import { orderSheetsOf, readOrder, type ReadOrder } from "../orderSheet/readOrder";
import { measurementsBehind, type Measurement } from "../trace/measurements";
import { referencesOf } from "../trace/references";
import type { SheetCellAddress } from "../../workbook/address";
import { allPrecedents } from "../trace/precedents";
import { nextSheetName } from "../../workbook/nextSheetName";
import { isSigned } from "./readSignedOrder";
import { signedOrderSheet, type FrozenOrder } from "./signedOrderSheet";

/** The live order of a workbook, with every measurement behind it. */
export interface LiveOrder {
  readonly order: ReadOrder;
  readonly job: string;
  readonly measurements: readonly Measurement[];
}

/** The cells of an order's lines. */
const cellsOf = ({ sheet, lines, columns }: ReadOrder): SheetCellAddress[] =>
  lines.flatMap(({ row }) =>
    Object.values(columns).flatMap((column) => (column === undefined ? [] : [{ sheet, row, column }])),
  );

/** The sheets with an order that isn't signed. */
export const liveOrdersIn = (contents: Contents): string[] =>
  orderSheetsOf(contents).filter((name) => {
    const sheet = contents.sheets.get(name);
    return sheet !== undefined && !isSigned(sheet);
  });

/** Whether an order's lines are calculated from a sheet. */
const isBehind = (contents: Contents, order: string, sheet: string): boolean =>
  (contents.sheets.get(order)?.formulas ?? []).some((line, row) =>
    line.some((_, column) =>
      referencesOf(contents, order, { row, column }).some((reference) => reference.sheet === sheet),
    ),
  );

/** The order that the user means: the active sheet, the order calculated from the active sheet, or the only order. */
export const chooseOrder = (contents: Contents, activeSheetName: string): string => {
  const orders = liveOrdersIn(contents);
  const [only] = orders;
  if (only === undefined)
    throw new InputError(
      "The workbook has no order: build a takeoff first, or go to a sheet with an order's headings. Nothing was written.",
    );
  if (orders.includes(activeSheetName)) return activeSheetName;
  const behind = orders.filter((order) => isBehind(contents, order, activeSheetName));
  const [first] = behind.length > 0 ? behind : orders;
  if (behind.length !== 1 && orders.length > 1)
    throw new InputError(
      `The workbook has ${orders.length} orders, ${orders.join(", ")}: go to the one that is meant. Nothing was written.`,
    );
  return first ?? only;
};

/** The job: the part of the order's title after the colon. */
export const jobOf = (contents: Contents, sheet: string): string => {
  const title = contents.sheets.get(sheet)?.cells[0]?.[ORDER.item];
  return typeof title === "string" ? (/^[^:]*: *(.*)$/.exec(title)?.[1] ?? "") : "";
};

export const readLiveOrder = (contents: Contents, sheet: string): LiveOrder => {
  const there = contents.sheets.get(sheet);
  if (!there) throw new InputError(`There is no sheet "${sheet}" in the workbook. Nothing was written.`);
  const order = readOrder(sheet, there);
  return {
    order,
    job: jobOf(contents, sheet),
    // The order's own results are in its lines.
    measurements: measurementsBehind(contents, allPrecedents(contents, cellsOf(order))).filter(
      (measurement) => measurement.sheet !== sheet || measurement.kind === "input",
    ),
  };
};

const FROZEN = "Signed";

/** The sheet that freezes a live order. */
export const frozenSheet = (contents: Contents, live: LiveOrder, dateSerial: number): FrozenOrder => {
  const orderContents = contents.sheets.get(live.order.sheet);
  if (!orderContents) throw new Error(`The sheet of the order "${live.order.sheet}" is gone.`);
  return signedOrderSheet({
    sheetName: nextSheetName(FROZEN, contents),
    dateSerial,
    orderContents,
    ...live,
  });
};

/** Freezes the order that the user means on a new sheet. */
export const freezeOrder = async (host: Host, dateSerial: number): Promise<Added> => {
  const [contents, { sheet: activeSheetName }] = await Promise.all([host.contents(), host.activeSheet()]);
  const { plan } = frozenSheet(
    contents,
    readLiveOrder(contents, chooseOrder(contents, activeSheetName)),
    dateSerial,
  );
  const undo = await host.addSheets({ sheets: [plan], names: [] });
  return { sheets: [plan.name], undo };
};
