import type { Matrix } from "../../shared/cell";
import type { CellAddress } from "./address";

/** The active sheet: what its cells show, from A1 to the end of the used range, and the selected cell. */
export interface ActiveSheet {
  readonly sheet: string;
  readonly selected: CellAddress;
  readonly cells: Matrix;
}
