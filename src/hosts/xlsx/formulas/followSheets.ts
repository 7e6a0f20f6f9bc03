import { sheetPrefix } from "../../../sheets/address";
import { formulaOf, tokensOf, type Token } from "./tokens";

/** What became of sheets, by their names in small letters: another name, or none where a sheet was taken away. */
export type SheetFates = ReadonlyMap<string, string | undefined>;

const GONE: Token = { kind: "sign", text: "#REF!" };

/** The sheet that a token names for the reference behind it; undefined where it names none of this workbook. */
const sheetNamed = (tokens: readonly Token[], at: number): string | undefined => {
  const { kind, text } = tokens[at] as Token;
  if (tokens[at + 1]?.text !== "!" || tokens[at - 1]?.kind === "bracket") return undefined;
  if (kind === "quoted") return text.slice(1, -1).replaceAll("''", "'");
  return kind === "word" ? text : undefined;
};

/** Behind the reference that begins at an index: one cell, a range, or a name. */
const endOfReference = (tokens: readonly Token[], at: number): number =>
  tokens[at + 1]?.text === ":" && tokens[at + 2]?.kind === "reference" ? at + 3 : at + 1;

/** A formula that calls sheets by the names that they have now; what was on a sheet that is gone is an error in it. */
export const followSheets = (formula: string, fates: SheetFates): string => {
  const tokens = tokensOf(formula);
  const followed: Token[] = [];
  for (let at = 0; at < tokens.length;) {
    const name = sheetNamed(tokens, at)?.toLowerCase();
    if (name === undefined || !fates.has(name)) {
      followed.push(tokens[at++] as Token);
      continue;
    }
    const now = fates.get(name);
    followed.push(now === undefined ? GONE : { kind: "quoted", text: sheetPrefix(now) });
    at = now === undefined ? endOfReference(tokens, at + 2) : at + 2;
  }
  return formulaOf(followed);
};
