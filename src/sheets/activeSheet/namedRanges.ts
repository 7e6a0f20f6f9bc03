import { CellError, isBlank, type Matrix } from "../../../shared/cell";
import { InputError } from "../../../shared/inputError";
import type { Host } from "../../workbook/host";
import { PANEL_NAME } from "../panelSheet";
import { ROOF_NAMES } from "../roofSheet/roofSheetNames";

/** The cells of our templates' defined names; undefined for names that the workbook doesn't have. */
export type NamedRanges = ReadonlyMap<string, Matrix | undefined>;

const NAMES = [PANEL_NAME, ...Object.values(ROOF_NAMES)];

export const readNamedRanges = async (host: Host): Promise<NamedRanges> =>
  new Map(await Promise.all(NAMES.map(async (name) => [name, await host.namedRange(name)] as const)));

/** Throws an InputError with the message of the first error in a block; returns a block without errors. */
export const withoutErrors = (cells: Matrix): Matrix => {
  const error = cells.flat().find((cell) => cell instanceof CellError);
  if (error instanceof CellError) throw new InputError(error.message || `a cell holds ${error.code}`);
  return cells;
};

export const isAllBlank = (cells: Matrix): boolean => cells.every((row) => row.every(isBlank));
