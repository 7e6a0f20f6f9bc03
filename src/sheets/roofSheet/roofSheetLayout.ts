import type { CellAddress } from "../../workbook/address";
import type { RoofInput } from "./roofSheetOptions";

/** Enough for most houses. A check warns of corners below. */
const FEWEST_SIDES = 24;
const SPARE_SIDES = 4;

/** Labels of the inputs, each with its value beside it. */
export const ROOF_INPUTS = {
  pitch: { label: "Pitch", row: 3 },
  eaveOverhang: { label: "Eave overhang (ft)", row: 4 },
  rakeOverhang: { label: "Rake overhang (ft)", row: 5 },
} as const;
export const INPUT_COLUMN = 1;
/** The row of the warning about corners that aren't read. */
export const CHECK_ROW = 6;
/** Rows below the footprint block that are checked for more corners. */
export const ROWS_BELOW = 40;

export const FIRST_SIDE_ROW = 9;
export const SIDE_COLUMNS = {
  side: 0,
  x: 1,
  y: 2,
  gable: 3,
  ownPitch: 4,
  pitchUsed: 5,
  gableSide: 6,
} as const;
export const SIDE_HEADINGS = ["Side", "x (ft)", "y (ft)", "Gable", "Own pitch", "Pitch used", "Gable side"];

const TABLES_COLUMN = 8;

/** Where the pictures of the roof go: to the right of the tables, one below the other. */
export const ROOF_PLAN: CellAddress = { row: 2, column: 18 };
export const ROOF_VIEW: CellAddress = { row: 28, column: 18 };
export const ROOF_PICTURE_BOX_PX = { width: 640, height: 560 } as const;

/** The positions of the parts of a roof sheet. */
export interface RoofLayout {
  /** Rows for sides of the footprint; the roof has at most as many planes. */
  readonly sides: number;
  readonly planes: CellAddress;
  readonly edges: CellAddress;
  readonly edgeRows: number;
  readonly foot: number;
}

export const layOutRoof = ({ corners: { length } }: RoofInput): RoofLayout => {
  const sides = Math.max(FEWEST_SIDES, length + SPARE_SIDES);
  // A roof of n sides has at most 2n - 3 edges between its planes, and where overhangs differ some short ones more.
  const edgeRows = 4 * sides;
  const edgesRow = FIRST_SIDE_ROW + sides + 3;
  return {
    sides,
    planes: { row: FIRST_SIDE_ROW, column: TABLES_COLUMN },
    edges: { row: edgesRow, column: TABLES_COLUMN },
    edgeRows,
    foot: edgesRow + edgeRows + 1,
  };
};
