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

/** With their labels: of nothing but blanks there is no seal. */
const INPUTS: Area = {
  from: { row: INPUT_ROWS.plane, column: LABEL_COLUMN },
  to: { row: INPUT_ROWS.start, column: VALUE_COLUMN },
};
/** Openings, and corners that are typed, with what stands between and the labels above. */
const TYPED: Area = { from: { ...OPENINGS.from, row: OPENINGS.from.row - 1 }, to: CORNERS.to };

const BEGINS = '="Picture: "&';

/** Whether a formula is the caption of an earlier picture. */
const isCaption = (holds: Cell): boolean => typeof holds === "string" && holds.startsWith(BEGINS);

/** What a picture is drawn for, as the sheet's cells would say it. */
const inputsFor = (view: ActiveSheet, start: string | undefined): Matrix =>
  valuesIn(view, INPUTS).map(([label = null, typed = null], index) => [
    label,
    start !== undefined && index === INPUT_ROWS.start - INPUTS.from.row ? start : typed,
  ]);

/** Excel takes a text of up to 255 letters in a formula. */
const MOST_LETTERS = 200;

/** Hundredths of a foot are enough to tell planes by. */
const short = (cell: Cell): string => String(typeof cell === "number" ? Number(cell.toFixed(2)) : cell);

/** `Shape rectangle, Eave (ft) 30, Start left`; the plane's name, which comes first, is the sheet's title. */
const inWords = ([, ...inputs]: Matrix): string =>
  inputs
    .flatMap(([label = null, typed = null]) => (isBlank(typed) ? [] : [`${short(label)} ${short(typed)}`]))
    .join(", ")
    .slice(0, MOST_LETTERS);

/**
 * The line beneath a field sheet's picture: that it fits the cells, or, when they say something else, what it was drawn for. A
 * seal tells the two apart. `start` is the picture's own, where it isn't the sheet's; `panel` is the panel's block.
 */
export const captionPatch = (view: ActiveSheet, panel: Matrix, start: string | undefined): CellPatch => {
  const inputs = inputsFor(view, start);
  const seal = sealOf(inputs) + sealOf(valuesIn(view, TYPED)) + sealOf(panel);
  const now = [a1Range(INPUTS.from, INPUTS.to), a1Range(TYPED.from, TYPED.to), PANEL_NAME]
    .map((cells) => call(sealSpec, cells))
    .join("+");
  const fits = quotedText("drawn for what stands here.");
  const isOld = quotedText(`put it anew, for it was drawn for ${inWords(inputs)}.`);
  const unknown = quotedText("whether it fits what stands here can't be worked out.");
  return {
    sheet: view.sheet,
    at: CAPTION,
    cells: [[{ content: formula(`${BEGINS}IFERROR(IF(${now}=${seal},${fits},${isOld}),${unknown})`) }]],
    mayReplace: isCaption,
  };
};
