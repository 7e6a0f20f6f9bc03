import { CellError, isBlank, isMatrix, type Argument, type Cell, type Matrix } from "../../../shared/cell";
import { InputError } from "../../../shared/inputError";
import { layoutStart } from "../../../shared/kinds/layoutStart";
import { openings } from "../../../shared/kinds/openings";
import { outline } from "../../../shared/kinds/outline";
import { panelBlock } from "../../../shared/kinds/panelBlock";
import { DEFAULT_START, type LayoutStart } from "../../../shared/layoutStart";
import type { Panel } from "../../../shared/kinds/panel";
import { runFunction } from "../../../shared/spec/runner";
import { outlineSpec } from "../../../functions/layout/outline";
import { planeOutlineSpec } from "../../../functions/roof/planeOutline";
import type { FunctionSpec } from "../../../shared/spec/spec";
import type { Plane } from "../../../functions/layout/engine/face";
import {
  CORNERS,
  INPUT_LABELS,
  INPUT_ROWS,
  LABEL_COLUMN,
  OPENINGS,
  VALUE_COLUMN,
  type InputKey,
} from "../fieldSheet/fieldSheetLayout";
import { valueAt, valuesIn } from "../../workbook/contents";
import type { ActiveSheet } from "../../workbook/activeSheet";
import { isAllBlank, withoutErrors, type NamedRanges } from "./namedRanges";
import { PANEL_NAME } from "../panelSheet";
import { roofArguments } from "./activeRoof";
import { numberOfRoofPlane, PLANE_COLUMNS, ROOF_SHAPE } from "../takeoff/planeSection";
import { activePlaneRow } from "../takeoff/activePlaneRow";

/** A roof plane read from the active sheet, and checked. */
export interface ActivePlane {
  readonly name: string;
  readonly plane: Plane;
  readonly panel: Panel;
  readonly start: LayoutStart;
}

export const isFieldSheet = (view: ActiveSheet): boolean =>
  (Object.keys(INPUT_ROWS) as InputKey[]).every(
    (key) => valueAt(view, { row: INPUT_ROWS[key], column: LABEL_COLUMN }) === INPUT_LABELS[key],
  );

/** A function's table of corners. Throws an InputError with the function's message if it gives an error. */
const cornersFrom = (spec: FunctionSpec, args: readonly Argument[]): Matrix => {
  const corners = runFunction(spec, args);
  if (corners instanceof CellError)
    throw new InputError(corners.message || `the plane's measurements hold ${corners.code}`);
  if (!isMatrix(corners)) throw new InputError("the plane isn't measured yet");
  return corners;
};

/** The corners of a roof plane from the footprint, by the plane's name. */
const cornersOfRoof = (name: Cell, named: NamedRanges): Matrix => {
  const { before, after } = roofArguments(named);
  const plane = numberOfRoofPlane(String(name));
  return cornersFrom(planeOutlineSpec, [...before, plane, ...after]);
};

/** The corners of the plane in a takeoff row. */
const cornersOfRow = (view: ActiveSheet, row: number, named: NamedRanges): Matrix => {
  const at = (column: keyof typeof PLANE_COLUMNS): Cell =>
    valueAt(view, { row, column: PLANE_COLUMNS[column] });
  if (at("shape") === ROOF_SHAPE) return cornersOfRoof(at("name"), named);
  return cornersFrom(outlineSpec, [at("shape"), at("eave"), at("slopeUsed"), at("top")]);
};

const nameInWords = (cell: Cell): string =>
  isBlank(cell) || cell instanceof CellError ? "plane" : String(cell);

/** The typed corners of a field sheet; if none, those from its measurements. */
const cornersOfFieldSheet = (view: ActiveSheet, at: (key: InputKey) => Cell, named: NamedRanges): Matrix => {
  const typed = withoutErrors(valuesIn(view, CORNERS));
  if (!isAllBlank(typed)) return typed;
  if (at("shape") === ROOF_SHAPE) return cornersOfRoof(at("plane"), named);
  return cornersFrom(outlineSpec, [at("shape"), at("eave"), at("slopeLength"), at("top"), at("lean")]);
};

const onFieldSheet = (view: ActiveSheet, panel: Panel, named: NamedRanges): ActivePlane => {
  const at = (key: InputKey): Cell => valueAt(view, { row: INPUT_ROWS[key], column: VALUE_COLUMN });
  const openingRows = withoutErrors(valuesIn(view, OPENINGS));
  const start = at("start");
  if (start instanceof CellError) throw new InputError(`the start holds ${start.code}`);
  return {
    name: nameInWords(at("plane")),
    panel,
    plane: {
      outline: outline.read(cornersOfFieldSheet(view, at, named), "outline"),
      openings: isAllBlank(openingRows) ? [] : openings.read(openingRows, "openings"),
    },
    start: layoutStart.read(start === null || start === "" ? DEFAULT_START : start, "start"),
  };
};

const onTakeoff = (view: ActiveSheet, row: number, panel: Panel, named: NamedRanges): ActivePlane => ({
  name: nameInWords(valueAt(view, { row, column: PLANE_COLUMNS.name })),
  panel,
  plane: { outline: outline.read(cornersOfRow(view, row, named), "outline"), openings: [] },
  start: layoutStart.read(DEFAULT_START, "start"),
});

/**
 * The active plane: that of the field sheet, or of the selected row of a takeoff. Throws an InputError with what is missing or
 * wrong.
 */
export const activePlane = (view: ActiveSheet, named: NamedRanges): ActivePlane => {
  const panelCells = named.get(PANEL_NAME);
  const row = activePlaneRow(view);
  if (row === undefined && !isFieldSheet(view))
    throw new InputError(
      "Select a plane's row on a takeoff, or open a field sheet, to see its panel layout.",
    );
  if (!panelCells)
    throw new InputError(`This workbook has no panel sheet (name ${PANEL_NAME}): build a takeoff first.`);
  const panel = panelBlock.read(withoutErrors(panelCells), "panel");
  return row === undefined ? onFieldSheet(view, panel, named) : onTakeoff(view, row, panel, named);
};
