import type { Cell, Matrix } from "../../shared/cell";
import { CellError } from "../../shared/cell";
import { InputError } from "../../shared/inputError";
import { layoutStart } from "../../shared/kinds/layoutStart";
import { openings } from "../../shared/kinds/openings";
import { outline } from "../../shared/kinds/outline";
import { panelBlock } from "../../shared/kinds/panelBlock";
import { DEFAULT_START, type LayoutStart } from "../../shared/layoutStart";
import type { Panel } from "../../shared/panel";
import { runFunction } from "../../shared/runner";
import { outlineSpec } from "../../functions/layout/outline";
import type { Plane } from "../../functions/layout/engine/face";
import {
  CORNERS,
  INPUT_LABELS,
  INPUT_ROWS,
  LABEL_COLUMN,
  OPENINGS,
  VALUE_COLUMN,
  type InputKey,
} from "./fieldSheet/layout";
import { blockInView, cellInView, type SheetInView } from "./inView";
import { PANEL_NAME } from "./panelSheet";
import { PLANE } from "./takeOff/planes";
import { planeRowInView } from "./takeOff/planeRow";

/** A roof plane as a sheet describes it, read and checked. */
export interface PlaneInView {
  readonly name: string;
  readonly plane: Plane;
  readonly panel: Panel;
  readonly start: LayoutStart;
}

const isBlank = (cell: Cell): boolean => cell === null || cell === "";

const isFieldSheet = (view: SheetInView): boolean =>
  (Object.keys(INPUT_ROWS) as InputKey[]).every(
    (key) => cellInView(view, { row: INPUT_ROWS[key], column: LABEL_COLUMN }) === INPUT_LABELS[key],
  );

/** Passes on what an error in a block says; the kinds read blocks without errors. */
const withoutErrors = (cells: Matrix): Matrix => {
  const error = cells.flat().find((cell) => cell instanceof CellError);
  if (error instanceof CellError)
    throw new InputError(error.message || `a cell of the plane holds ${error.code}`);
  return cells;
};

/** The corners that OUTLINE gives for the measures in a row of a take-off. */
const cornersOfRow = (view: SheetInView, row: number): Matrix => {
  const at = (column: keyof typeof PLANE): Cell => cellInView(view, { row, column: PLANE[column] });
  const corners = runFunction(outlineSpec, [at("shape"), at("eave"), at("slopeUsed"), at("top")]);
  if (corners instanceof CellError)
    throw new InputError(corners.message || `the plane's measures hold ${corners.code}`);
  if (!Array.isArray(corners)) throw new InputError("the plane isn't measured yet");
  return corners;
};

const nameInWords = (cell: Cell): string =>
  isBlank(cell) || cell instanceof CellError ? "plane" : String(cell);

const onFieldSheet = (view: SheetInView, panel: Panel): PlaneInView => {
  const at = (key: InputKey): Cell => cellInView(view, { row: INPUT_ROWS[key], column: VALUE_COLUMN });
  const openingRows = withoutErrors(blockInView(view, OPENINGS.from, OPENINGS.to));
  const start = at("start");
  if (start instanceof CellError) throw new InputError(`the start holds ${start.code}`);
  return {
    name: nameInWords(at("plane")),
    panel,
    plane: {
      outline: outline.read(withoutErrors(blockInView(view, CORNERS.from, CORNERS.to)), "outline"),
      openings: openingRows.every((row) => row.every(isBlank)) ? [] : openings.read(openingRows, "openings"),
    },
    start: layoutStart.read(start === null || start === "" ? DEFAULT_START : start, "start"),
  };
};

const onTakeOff = (view: SheetInView, row: number, panel: Panel): PlaneInView => ({
  name: nameInWords(cellInView(view, { row, column: PLANE.name })),
  panel,
  plane: { outline: outline.read(cornersOfRow(view, row), "outline"), openings: [] },
  start: layoutStart.read(DEFAULT_START, "start"),
});

/**
 * The plane that a person looks at: that of a field sheet, or of the selected row of a take-off. Throws an InputError
 * with what is missing or wrong.
 */
export const planeInView = (view: SheetInView, panelCells: Matrix | undefined): PlaneInView => {
  const row = planeRowInView(view);
  if (row === undefined && !isFieldSheet(view))
    throw new InputError(
      "Select a plane's row on a take-off, or go to a field sheet, to see the plane laid.",
    );
  if (!panelCells)
    throw new InputError(`This workbook has no block named ${PANEL_NAME}: a take-off brings one.`);
  const panel = panelBlock.read(withoutErrors(panelCells), "panel");
  return row === undefined ? onFieldSheet(view, panel) : onTakeOff(view, row, panel);
};
