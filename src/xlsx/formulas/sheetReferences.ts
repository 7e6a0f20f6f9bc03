import { sheetPrefix } from "../../workbook/address";
import { formulaOf, tokensOf, type Token } from "../../workbook/formulas/tokens";

/** Renamed and deleted sheets: the old name in lowercase, and the new name, or undefined where the sheet was deleted. */
export type SheetRenames = ReadonlyMap<string, string | undefined>;

/** What has another name now, or is gone, and may still be named in formulas. */
export interface RenamesAndDeletions {
  readonly sheets: SheetRenames;
  /** Tables deleted with their sheets, in lowercase. */
  readonly deletedTables: ReadonlySet<string>;
}

interface Replacement {
  readonly token: Token;
  /** The index after the last token it replaces. */
  readonly end: number;
}

type Rewrite = (tokens: readonly Token[], at: number) => Replacement | undefined;

const DELETED: Token = { kind: "error", text: "#REF!" };

const textAt = (tokens: readonly Token[], at: number): string | undefined => tokens[at]?.text;

const unquoted = ({ kind, text }: Token): string =>
  kind === "quoted" ? text.slice(1, -1).replaceAll("''", "'") : text;

/** The index after the reference that begins at `at`: one cell, a range, or a name. */
const endOfReference = (tokens: readonly Token[], at: number): number =>
  textAt(tokens, at + 1) === ":" && tokens[at + 2]?.kind === "reference" ? at + 3 : at + 1;

/** The index after `Jan:Mar` (the sheets of a 3-D reference) at `at`; undefined where there is none. */
const endOfSheetRange = (tokens: readonly Token[], at: number): number | undefined =>
  tokens[at]?.kind === "word" &&
  textAt(tokens, at - 1) !== "!" &&
  textAt(tokens, at + 1) === ":" &&
  tokens[at + 2]?.kind === "word" &&
  textAt(tokens, at + 3) === "!"
    ? at + 3
    : undefined;

/** Replaces the sheet names before the `!` at index `end`: one sheet, or the first and last of a 3-D reference. */
const rewriteSheets = (
  tokens: readonly Token[],
  names: readonly string[],
  end: number,
  sheets: SheetRenames,
): Replacement | undefined => {
  const keys = names.map((name) => name.toLowerCase());
  if (!keys.some((key) => sheets.has(key))) return undefined;
  const now = names.map((name, index) =>
    sheets.has(keys[index] ?? "") ? sheets.get(keys[index] ?? "") : name,
  );
  return now.includes(undefined)
    ? { token: DELETED, end: endOfReference(tokens, end + 1) }
    : { token: { kind: "quoted", text: sheetPrefix(now.join(":")) }, end: end + 1 };
};

/** `Jan:Mar!A1` or `'Jan 26:Mar 26'!A1`. */
const rewriteSheetRange =
  (sheets: SheetRenames): Rewrite =>
  (tokens, at) => {
    const token = tokens[at] as Token;
    const end = token.kind === "quoted" && token.text.includes(":") ? at + 1 : endOfSheetRange(tokens, at);
    if (end === undefined || textAt(tokens, end) !== "!") return undefined;
    const names = unquoted({ kind: token.kind, text: formulaOf(tokens.slice(at, end)) }).split(":");
    return rewriteSheets(tokens, names, end, sheets);
  };

/** `Jan!A1` or `'Jan 26'!A1`, of this workbook. */
const rewriteSheet =
  (sheets: SheetRenames): Rewrite =>
  (tokens, at) => {
    const token = tokens[at] as Token;
    const isName = token.kind === "quoted" || token.kind === "word";
    const isOther = tokens[at - 1]?.kind === "bracket" || endOfSheetRange(tokens, at - 2) !== undefined;
    if (!isName || isOther || textAt(tokens, at + 1) !== "!") return undefined;
    return rewriteSheets(tokens, [unquoted(token)], at + 1, sheets);
  };

/** `Bids` or `Bids[Feet]`. */
const rewriteTable =
  (gone: ReadonlySet<string>): Rewrite =>
  (tokens, at) => {
    const { kind, text } = tokens[at] as Token;
    if (kind !== "word" || !gone.has(text.toLowerCase())) return undefined;
    if (textAt(tokens, at - 1) === "!" || ["(", "!"].includes(textAt(tokens, at + 1) ?? "")) return undefined;
    return { token: DELETED, end: tokens[at + 1]?.kind === "bracket" ? at + 2 : at + 1 };
  };

const rewritten = (formula: string, follows: readonly Rewrite[]): string => {
  const tokens = tokensOf(formula);
  const now: Token[] = [];
  for (let at = 0; at < tokens.length;) {
    const found = follows.map((follow) => follow(tokens, at)).find((each) => each !== undefined);
    now.push(found?.token ?? (tokens[at] as Token));
    at = found?.end ?? at + 1;
  }
  return formulaOf(now);
};

/** A formula with the current names of its sheets. A reference to a deleted sheet or table becomes #REF!. */
export const updateReferences = (formula: string, { sheets, deletedTables }: RenamesAndDeletions): string =>
  rewritten(formula, [rewriteSheetRange(sheets), rewriteSheet(sheets), rewriteTable(deletedTables)]);

/** The same for cells, where the engine has updated references except 3-D references and deleted tables. */
export const updateWhereEngineDoesNot = (
  formula: string,
  { sheets, deletedTables }: RenamesAndDeletions,
): string => rewritten(formula, [rewriteSheetRange(sheets), rewriteTable(deletedTables)]);
