import type { Figure } from "../pictures/figure";
import type { CellAddress } from "./address";
import type { SheetPlan } from "./plan";

/** A cell that is typed into, and what is told while it is selected. */
export interface InputPrompt {
  readonly at: CellAddress;
  readonly title: string;
  readonly prompt: string;
}

/** A sheet for a file of its own, that is printed too: it may hold a drawing, and cells to be filled in. Only a file takes it. */
export interface PrintableSheet extends SheetPlan {
  readonly inputPrompts: readonly InputPrompt[];
  /** Rows with which a new page begins, on a sheet of several pages. */
  readonly pageBreaksBefore?: readonly number[];
  readonly drawing?: { readonly at: CellAddress; readonly figure: Figure };
}
