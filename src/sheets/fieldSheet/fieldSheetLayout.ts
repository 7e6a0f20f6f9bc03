import type { CellAddress } from "../../workbook/address";

/** The positions of the parts of a field sheet, counted from 0. Reading a field sheet uses them too. */
export const LABEL_COLUMN = 0;
export const VALUE_COLUMN = 1;

/** The plane's inputs: one row each, with a label and the value beside it. */
export const INPUT_ROWS = { plane: 3, shape: 4, eave: 5, top: 6, slopeLength: 7, lean: 8, start: 9 } as const;
export type InputKey = keyof typeof INPUT_ROWS;

export const INPUT_LABELS: Readonly<Record<InputKey, string>> = {
  plane: "Plane",
  shape: "Shape",
  eave: "Eave (ft)",
  top: "Top (ft)",
  slopeLength: "Slope length (ft)",
  lean: "Lean (ft)",
  start: "Start",
};

interface Block {
  readonly from: CellAddress;
  readonly to: CellAddress;
}

/** Corners of chimneys and skylights, typed. */
export const OPENINGS: Block = { from: { row: 4, column: 3 }, to: { row: 15, column: 4 } };
/** Typed corners of a plane that no shape describes; blank: the measurements give the corners. */
export const CORNERS: Block = { from: { row: 4, column: 6 }, to: { row: 15, column: 7 } };

export const PICTURE: CellAddress = { row: 2, column: 9 };
/** The caption below the picture says what it was drawn for. */
export const CAPTION: CellAddress = { row: 16, column: 9 };
/** Height of the rows under the picture, the same in every host. */
export const PICTURE_ROW_PX = 24;
/** The space for the picture: beside the inputs, above its caption. */
export const PICTURE_BOX_PX = { width: 560, height: (CAPTION.row - PICTURE.row) * PICTURE_ROW_PX } as const;

/** Chalk lines start here on the left, end pieces on the right. */
export const TABLES_ROW = 18;
export const END_PIECES_COLUMN = 9;
