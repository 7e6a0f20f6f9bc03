import { sealSpec } from "../../../functions/money/seal";
import { isBlank, type Cell, type Matrix } from "../../../shared/cell";
import { sealOf } from "../../../shared/seal";
import { a1Range, type Area } from "../../workbook/address";
import { call, quotedText } from "../../workbook/formula";
import { valuesIn } from "../../workbook/contents";
import type { ActiveSheet } from "../../workbook/activeSheet";
import { PANEL_NAME } from "../panelSheet";
import type { CellPatch } from "../../workbook/patch";
import { formula } from "../../workbook/plan";
import { CAPTION, CORNERS, INPUT_ROWS, LABEL_COLUMN, OPENINGS, VALUE_COLUMN } from "./fieldSheetLayout";

/** The inputs with their labels, because blank cells alone have no seal. */
const INPUTS: Area = {
  from: { row: INPUT_ROWS.plane, column: LABEL_COLUMN },
  to: { row: INPUT_ROWS.start, column: VALUE_COLUMN },
};
/** Openings and typed corners, with the labels above them. */
const TYPED: Area = { from: { ...OPENINGS.from, row: OPENINGS.from.row - 1 }, to: CORNERS.to };

const BEGINS = '="Picture: "&';

/** Whether a formula is the caption of an earlier picture. */
const isCaption = (holds: Cell): boolean => typeof holds === "string" && holds.startsWith(BEGINS);

/** The inputs that a picture is drawn for. */
const inputsFor = (view: ActiveSheet, start: string | undefined): Matrix =>
  valuesIn(view, INPUTS).map(([label = null, typed = null], index) => [
    label,
    start !== undefined && index === INPUT_ROWS.start - INPUTS.from.row ? start : typed,
  ]);

/** Excel allows at most 255 characters in a formula's text. */
const MOST_LETTERS = 200;

/** Hundredths of a foot are enough to tell planes apart. */
const short = (cell: Cell): string => String(typeof cell === "number" ? Number(cell.toFixed(2)) : cell);

/** `Shape rectangle, Eave (ft) 30, Start left`; without the plane's name, which is in the title. */
const inWords = ([, ...inputs]: Matrix): string =>
  inputs
    .flatMap(([label = null, typed = null]) => (isBlank(typed) ? [] : [`${short(label)} ${short(typed)}`]))
    .join(", ")
    .slice(0, MOST_LETTERS);

/**
 * The caption below a field sheet's picture: that the picture matches the cells, or what it was drawn for if they have changed.
 * A seal tells which. `start` is the picture's own start, if it differs from the sheet's; `panel` is the panel block.
 */
export const captionPatch = (view: ActiveSheet, panel: Matrix, start: string | undefined): CellPatch => {
  const inputs = inputsFor(view, start);
  const seal = sealOf(inputs) + sealOf(valuesIn(view, TYPED)) + sealOf(panel);
  const now = [a1Range(INPUTS.from, INPUTS.to), a1Range(TYPED.from, TYPED.to), PANEL_NAME]
    .map((cells) => call(sealSpec, cells))
    .join("+");
  const fits = quotedText("matches this sheet.");
  const isOutdated = quotedText(`insert it again: it was drawn for ${inWords(inputs)}.`);
  const unknown = quotedText("can't tell whether it matches this sheet.");
  return {
    sheet: view.sheet,
    at: CAPTION,
    cells: [[{ content: formula(`${BEGINS}IFERROR(IF(${now}=${seal},${fits},${isOutdated}),${unknown})`) }]],
    mayReplace: isCaption,
  };
};
