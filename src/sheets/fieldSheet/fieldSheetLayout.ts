import type { CellAddress } from "../../workbook/address";

/** Where the parts of a field sheet stand, rows and columns counted from 0. The picture's reader looks here too. */
export const LABEL_COLUMN = 0;
export const VALUE_COLUMN = 1;

/** What describes the plane: a label, and the value beside it, each in a row of its own. */
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
/** Corners of a face that no shape describes, typed; blank: the measures give the corners. */
export const CORNERS: Block = { from: { row: 4, column: 6 }, to: { row: 15, column: 7 } };

export const PICTURE: CellAddress = { row: 2, column: 9 };
/** Says what the picture was drawn for, beneath it. */
export const CAPTION: CellAddress = { row: 16, column: 9 };
/** Of the rows that the picture lies over, where nothing makes them higher: whatever a host's own rows are. */
export const PICTURE_ROW_PX = 24;
/** What the picture has to fit into: beside the inputs, above its caption. */
export const PICTURE_BOX_PX = { width: 560, height: (CAPTION.row - PICTURE.row) * PICTURE_ROW_PX } as const;

/** Chalk lines go down the left side from here, end pieces down the right. */
export const TABLES_ROW = 18;
export const END_PIECES_COLUMN = 9;
