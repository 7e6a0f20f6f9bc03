import type { CellAddress } from "./address";
import type { StyleName } from "./styles";

/**
 * What goes into a cell. The kind is explicit, so no host has to guess from the first character, and typed text can't become a
 * formula.
 */
export type CellContent =
  | { readonly kind: "text"; readonly text: string }
  | { readonly kind: "number"; readonly number: number }
  /** `result` is the formula's value, if the plan knows it. A file that no spreadsheet has calculated shows it. */
  | { readonly kind: "formula"; readonly formula: string; readonly result?: number | string };

export interface PlannedCell extends CellAddress {
  readonly content: CellContent | null;
  readonly style?: StyleName;
  readonly numberFormat?: string;
  /** The items of its drop-down list. */
  readonly choices?: readonly string[];
}

/** How a sheet is printed. */
export type Print =
  "one page, landscape" | "one page, portrait" | "one page wide, landscape" | "one page wide, portrait";

export interface SheetPlan {
  readonly name: string;
  readonly cells: readonly PlannedCell[];
  /** In pixels, from column A. */
  readonly columnWidths: readonly number[];
  /** In pixels, of the rows higher than the default. */
  readonly rowHeights: Readonly<Record<number, number>>;
  /** How it is printed; undefined: the host's default. */
  readonly print?: Print;
  /** Protected without a password. */
  readonly isProtected?: true;
  /** Frozen rows at the top. */
  readonly frozenRows: number;
}

export interface PlannedName {
  readonly name: string;
  readonly sheet: string;
  /** Absolute, such as `$A$4:$B$28`. */
  readonly range: string;
}

/** Sheets that belong together, and the defined names that their formulas use. */
export interface WorkbookPlan {
  readonly sheets: readonly SheetPlan[];
  readonly names: readonly PlannedName[];
}

export const text = (value: string): CellContent => ({ kind: "text", text: value });
export const number = (value: number): CellContent => ({ kind: "number", number: value });
/** Starts with "=". Only templates make formulas, never from typed text. */
export const formula = (value: string, result?: number | string): CellContent => ({
  kind: "formula",
  formula: value,
  ...(result !== undefined && { result }),
});

/** A typed value as content: text stays text. */
export const value = (typed: string | number): CellContent =>
  typeof typed === "number" ? number(typed) : text(typed);
