import type { Figure } from "../pictures/figure";
import type { CellAddress } from "./address";
import type { SheetPlan } from "./plan";

/** A cell to fill in, and the input message that shows while it is selected. */
export interface InputPrompt {
  readonly at: CellAddress;
  readonly title: string;
  readonly prompt: string;
}

/** A sheet for a workbook file that is also printed, such as a practice page. It may have a drawing and cells to fill in. */
export interface PrintableSheet extends SheetPlan {
  readonly inputPrompts: readonly InputPrompt[];
  /** Rows that start a new page, on a sheet of several pages. */
  readonly pageBreaksBefore?: readonly number[];
  readonly drawing?: { readonly at: CellAddress; readonly figure: Figure };
}
