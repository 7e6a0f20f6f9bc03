import { CellError, type Matrix } from "../../../shared/cell";
import { InputError } from "../../../shared/inputError";
import { panelBlock } from "../../../shared/kinds/panelBlock";
import { courses } from "../../../functions/courses/courses";
import type { Added, Host } from "../../workbook/host";
import { a1, sheetPrefix } from "../../workbook/address";
import { unlessEmpty } from "../../workbook/formula";
import { uniqueName } from "../../workbook/uniqueName";
import { valueAt } from "../../workbook/contents";
import type { ActiveSheet } from "../../workbook/activeSheet";
import { PANEL_NAME } from "../panelSheet";
import { formula, type CellContent } from "../../workbook/plan";
import { PLANE_COLUMNS } from "../takeoff/planeSection";
import { activePlaneRow, roofPlaneNumber } from "../takeoff/activePlaneRow";
import { roofPlaneOutline } from "../takeoff/roofFormulas";
import { fieldSheetPlan, type FieldSheetOptions } from "./fieldSheet";
import type { InputKey } from "./fieldSheetLayout";

/** The inputs that a field sheet takes from a takeoff's plane row, and their columns. */
const FROM_TAKEOFF: readonly (readonly [InputKey, keyof typeof PLANE_COLUMNS])[] = [
  ["plane", "name"],
  ["shape", "shape"],
  ["eave", "eave"],
  ["top", "top"],
  ["slopeLength", "slopeUsed"],
];

/** Formulas that follow a takeoff's plane row; blank cells stay blank. */
const inputsFrom = (view: ActiveSheet, row: number): FieldSheetOptions["inputs"] =>
  Object.fromEntries(
    FROM_TAKEOFF.map(([key, column]): [InputKey, CellContent] => {
      const cell = `${sheetPrefix(view.sheet)}${a1({ row, column: PLANE_COLUMNS[column] })}`;
      return [key, formula(unlessEmpty(cell, cell))];
    }),
  );

/** A plane from the footprint has its own corners. */
const outlineFrom = (view: ActiveSheet, row: number): Pick<FieldSheetOptions, "outlineOf"> => {
  const plane = roofPlaneNumber(view, row);
  return plane === undefined ? {} : { outlineOf: roofPlaneOutline(plane) };
};

/** The plane's courses now, to leave rows for; 0 if not known yet. */
const coursesNow = (view: ActiveSheet, row: number, panelCells: Matrix): number => {
  const slopeFt = valueAt(view, { row, column: PLANE_COLUMNS.slopeUsed });
  if (typeof slopeFt !== "number" || panelCells.flat().some((cell) => cell instanceof CellError)) return 0;
  try {
    return courses(slopeFt, panelBlock.read(panelCells, "panel").exposedHeightIn);
  } catch (failure) {
    if (failure instanceof InputError) return 0;
    throw failure;
  }
};

const sheetNameFor = (plane: unknown): string => {
  // A sheet name has at most 31 characters, and none of these.
  const plain = String(plane)
    .replace(/[\\/?*[\]:']/g, " ")
    .trim();
  return `Field ${plain}`.slice(0, 28).trim();
};

/** Adds a field sheet for the active plane of a takeoff, or a blank one. */
export const addFieldSheet = async (host: Host): Promise<Added> => {
  const [{ sheets }, view, panelCells] = await Promise.all([
    host.existing(),
    host.activeSheet(),
    host.namedRange(PANEL_NAME),
  ]);
  if (!panelCells)
    throw new InputError(`This workbook has no panel sheet (name ${PANEL_NAME}): build a takeoff first.`);
  const row = activePlaneRow(view);
  const options: FieldSheetOptions =
    row === undefined
      ? { sheetName: uniqueName("Field sheet", sheets), inputs: {}, courses: 0 }
      : {
          sheetName: uniqueName(sheetNameFor(valueAt(view, { row, column: PLANE_COLUMNS.name })), sheets),
          inputs: inputsFrom(view, row),
          ...outlineFrom(view, row),
          courses: coursesNow(view, row, panelCells),
        };
  const sheet = fieldSheetPlan(options);
  const undo = await host.addSheets({ sheets: [sheet], names: [] });
  return { sheets: [sheet.name], undo };
};
