import type { CellAddress } from "./address";
import type { StyleName } from "./styles";

/**
 * What goes into a cell. The three are told apart here, so that no host ever has to guess from a first letter, and
 * text from a person can't become a formula.
 */
export type CellContent =
  | { readonly kind: "text"; readonly text: string }
  | { readonly kind: "number"; readonly number: number }
  /** `result` is what it comes to, where the plan knows: a file that no spreadsheet has calculated shows that. */
  | { readonly kind: "formula"; readonly formula: string; readonly result?: number | string };

export interface PlannedCell extends CellAddress {
  readonly content: CellContent | null;
  readonly style?: StyleName;
  readonly numberFormat?: string;
  /** The words that a drop-down offers. */
  readonly choices?: readonly string[];
}

/** How a sheet goes to paper. */
export type Print =
  "one page, landscape" | "one page, portrait" | "one page wide, landscape" | "one page wide, portrait";

export interface SheetPlan {
  readonly name: string;
  readonly cells: readonly PlannedCell[];
  /** In pixels, from column A. */
  readonly columnWidths: readonly number[];
  /** In pixels, of the rows that are higher than usual. */
  readonly rowHeights: Readonly<Record<number, number>>;
  /** How it goes to paper; undefined: as the host does by itself. */
  readonly print?: Print;
  /** Nobody types into it, unless they take the protection off; there is no password. */
  readonly isProtected?: true;
  /** Rows that stay in view while the rest scrolls. */
  readonly frozenRows: number;
}

export interface PlannedName {
  readonly name: string;
  readonly sheet: string;
  /** Absolute, such as `$A$4:$B$28`. */
  readonly range: string;
}

/** Sheets that belong together and the names by which their formulas call on each other. */
export interface WorkbookPlan {
  readonly sheets: readonly SheetPlan[];
  readonly names: readonly PlannedName[];
}

export const text = (value: string): CellContent => ({ kind: "text", text: value });
export const number = (value: number): CellContent => ({ kind: "number", number: value });
/** Starts with "="; made by templates only, never out of what a person typed. */
export const formula = (value: string, result?: number | string): CellContent => ({
  kind: "formula",
  formula: value,
  ...(result !== undefined && { result }),
});

/** A typed value as content: text stays text. */
export const value = (typed: string | number): CellContent =>
  typeof typed === "number" ? number(typed) : text(typed);
