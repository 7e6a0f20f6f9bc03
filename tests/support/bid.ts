import type { Cell } from "../../shared/cell";
import type { Host } from "../../src/workbook/host";
import { a1 } from "../../src/workbook/address";
import { BLANK_TAKEOFF, type TakeoffOptions } from "../../src/sheets/takeoff/takeoffOptions";

/** A workbook under test, whichever host keeps it. */
export interface BidWorkbook {
  readonly host: Host;
  type(sheet: string, address: string, typed: string | number | null): void;
  goTo(sheet: string): void;
  isProtected(sheet: string): boolean;
}

/** The address so many columns to the right of a text on a sheet. */
export const addressBeside = async (
  { host }: Pick<BidWorkbook, "host">,
  sheet: string,
  label: string,
  columns: number,
): Promise<string> => {
  const cells = (await host.contents()).sheets.get(sheet)?.cells ?? [];
  for (const [row, line] of cells.entries()) {
    const column = line.indexOf(label);
    if (column >= 0) return a1({ row, column: column + columns });
  }
  throw new Error(`"${sheet}" doesn't say "${label}"`);
};

/** Types what stands so many columns to the right of labels. */
export const typeBeside = async (
  bid: BidWorkbook,
  sheet: string,
  columns: number,
  typed: Readonly<Record<string, string | number>>,
): Promise<void> => {
  // All addresses first: each cell that is typed makes the workbook be calculated anew.
  const addresses = await Promise.all(
    Object.keys(typed).map((label) => addressBeside(bid, sheet, label, columns)),
  );
  Object.values(typed).forEach((value, index) => {
    bid.type(sheet, addresses[index] ?? "", value);
  });
};

/** Every row of a sheet that has something in it. */
export const rowsOf = async (
  { host }: Pick<BidWorkbook, "host">,
  sheet: string,
): Promise<(readonly Cell[])[]> => [...((await host.contents()).sheets.get(sheet)?.cells ?? [])];

/**
 * A roof that is counted by hand: a panel covers 2 sq ft, nothing is lost at its edges, and both planes are whole panels wide.
 * A runs 14.4 ft at 9 in 12, which is 18 ft up the slope. Everything is invented.
 */
export const HAND_COUNTED: TakeoffOptions = {
  ...BLANK_TAKEOFF,
  job: "barn",
  planes: [
    { name: "Plane A", shape: "rectangle", eave: 40, run: 14.4, pitch: 9, gableEdges: 0 },
    { name: "Plane B", shape: "rectangle", eave: 40, slopeLength: "18 ft", gableEdges: 0 },
  ],
  runs: [{ edge: "ridge", name: "ridge", length: 40 }],
  spare: 0.1,
  supplies: {
    "trim clips": { price: 14.5 },
    nails: { price: 6.9, perPack: 1000 },
    underlayment: { price: 68 },
  },
  trims: { "drip edge": { price: 11.4 }, "eave starter": { price: 12.75 }, ridge: { price: 19.8 } },
  panel: { exposedWidthIn: 24, exposedHeightIn: 12, panelsPerPack: 10, panelPrice: 7.35, trimLapIn: 2 },
};
