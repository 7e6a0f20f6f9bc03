import type { Figure } from "../pictures/figure";
import type { Place } from "./address";
import type { SheetPlan } from "./plan";

/** A cell that is typed into, and what is told while it is selected. */
export interface PaperEntry {
  readonly at: Place;
  readonly title: string;
  readonly prompt: string;
}

/** A sheet for a file of its own, that is printed too: it may hold a drawing, and cells to be filled in. Only a file takes it. */
export interface PaperSheet extends SheetPlan {
  readonly entries: readonly PaperEntry[];
  readonly drawing?: { readonly at: Place; readonly figure: Figure };
}
