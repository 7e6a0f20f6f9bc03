import { isBlank, type Argument, type Matrix } from "../../../shared/cell";
import { InputError } from "../../../shared/inputError";
import {
  FOOTPRINT,
  GABLES,
  OVERHANG,
  PITCH,
  RAKE_OVERHANG,
  roofOf,
} from "../../../functions/roof/roofParameters";
import type { Roof } from "../../../functions/roof/roofParts";
import type { Parameter } from "../../../shared/spec/spec";
import { valueAt } from "../../workbook/contents";
import type { ActiveSheet } from "../../workbook/activeSheet";
import { isAllBlank, withoutErrors, type NamedRanges } from "./namedRanges";
import { INPUT_COLUMN, ROOF_INPUTS } from "../roofSheet/roofSheetLayout";
import { ROOF_NAMES } from "../roofSheet/roofSheetNames";

/** Whether the active sheet is a roof sheet, by the labels of its inputs. */
export const isRoofSheet = (view: ActiveSheet): boolean =>
  Object.values(ROOF_INPUTS).every(
    ({ label, row }) => valueAt(view, { row, column: INPUT_COLUMN - 1 }) === label,
  );

const cellsOf = (named: NamedRanges, key: keyof typeof ROOF_NAMES): Matrix => {
  const cells = named.get(ROOF_NAMES[key]);
  if (!cells)
    throw new InputError("This workbook has no footprint: build a takeoff from a footprint and a pitch.");
  return withoutErrors(cells);
};

/** One pitch per side only if a side has its own pitch, as in the sheets' formulas. */
const pitchCells = (named: NamedRanges): Matrix =>
  isAllBlank(cellsOf(named, "ownPitches"))
    ? cellsOf(named, "pitch")
    : cellsOf(named, "pitchesUsed").filter((row) => !row.every(isBlank));

/** The roof arguments, before and after the plane or edge argument of roof functions. */
export const roofArguments = (
  named: NamedRanges,
): { readonly before: Argument[]; readonly after: Argument[] } => ({
  before: [cellsOf(named, "footprint"), pitchCells(named)],
  after: [cellsOf(named, "gables"), cellsOf(named, "eaveOverhang"), cellsOf(named, "rakeOverhang")],
});

/** Reads a block as the roof functions do. */
const readBlock = <T>({ label, kind }: Parameter<T>, cells: Matrix): T => {
  if (kind.shape !== "range") throw new Error(`${label} doesn't take a range`);
  return kind.read(cells, label);
};

/** The roof of the workbook's footprint and pitch. Throws an InputError with what is missing or wrong. */
export const roofFromNames = (named: NamedRanges): Roof => {
  const [footprint, pitch] = [cellsOf(named, "footprint"), pitchCells(named)];
  const [gables, eave, rake] = [
    cellsOf(named, "gables"),
    cellsOf(named, "eaveOverhang"),
    cellsOf(named, "rakeOverhang"),
  ];
  if (isAllBlank(footprint)) throw new InputError("Type the wall corners, in order around, to see the roof.");
  if (isAllBlank(pitch)) throw new InputError("Type the pitch to see the roof.");
  return roofOf(
    readBlock(FOOTPRINT, footprint),
    readBlock(PITCH, pitch),
    isAllBlank(gables) ? undefined : readBlock(GABLES, gables),
    readBlock(OVERHANG, isAllBlank(eave) ? [[OVERHANG.default]] : eave),
    isAllBlank(rake) ? undefined : readBlock(RAKE_OVERHANG, rake),
  );
};
