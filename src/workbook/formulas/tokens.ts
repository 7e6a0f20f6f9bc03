/**
 * A formula cut into the tokens that rewriting it must tell apart. Text, quoted sheet names and the column names in a table's
 * brackets are never rewritten. Joined together, the tokens are the formula again.
 */
export interface Token {
  readonly kind: Kind;
  readonly text: string;
}

type Kind =
  | "text"
  | "quoted"
  | "bracket"
  | "error"
  | "reference"
  | "number"
  | "word"
  | "space"
  /** An operator, a parenthesis, a separator: any other character. */
  | "sign";

/** `"14 ft"`; a doubled quote inside is a quote. */
const TEXT = /"(?:[^"]|"")*"/u;

/** `'Old bid'`, a sheet's name; a doubled apostrophe inside is an apostrophe. */
const QUOTED = /'(?:[^']|'')*'/u;

/** An error value that is written as a constant. */
const ERROR = /#(?:REF!|N\/A|NAME\?|VALUE!|DIV\/0!|NUM!|NULL!|SPILL!|CALC!|GETTING_DATA)/u;

const COLUMN = /\$?[A-Za-z]{1,3}/u;
const ROW = /\$?[0-9]{1,7}/u;
/** `LOG10(`, `AB1!`, `AB12_total` begin like a reference but are a function, a sheet and a name. */
const NO_LONGER_NAME = /(?![\w.(\\![])/u;
const NO_LONGER_NUMBER = /(?![\w.])/u;

/** `B4`, `$B$4` */
const CELL = `${COLUMN.source}${ROW.source}${NO_LONGER_NAME.source}`;
/** `B:D` */
const COLUMNS = `${COLUMN.source}:${COLUMN.source}${NO_LONGER_NAME.source}`;
/** `4:9` */
const ROWS = `${ROW.source}:${ROW.source}${NO_LONGER_NUMBER.source}`;

/** `12`, `.5`, `1.2E+3` */
const NUMBER = /(?:[0-9]+\.?[0-9]*|\.[0-9]+)(?:[Ee][+-]?[0-9]+)?/u;

/** The name of a function, a defined name, a table, or a sheet without quotes; TRUE and FALSE. */
const WORD = /[\p{L}_\\][\p{L}\p{N}_.\\?]*/u;

const SPACE = /\s+/u;

/** The kinds that a pattern tells, in the order in which they are tried. */
const PATTERNS: readonly (readonly [kind: Kind, pattern: string])[] = [
  ["text", TEXT.source],
  ["quoted", QUOTED.source],
  ["error", ERROR.source],
  ["reference", `${CELL}|${COLUMNS}|${ROWS}`],
  ["number", NUMBER.source],
  ["word", WORD.source],
  ["space", SPACE.source],
  ["sign", "[^]"],
];

const ANY_TOKEN = new RegExp(PATTERNS.map(([kind, pattern]) => `(?<${kind}>${pattern})`).join("|"), "uy");

/** The bracketed part that begins at an index, with the brackets inside it. In it, an apostrophe escapes the next character. */
const bracketFrom = (formula: string, at: number): string => {
  let depth = 0;
  for (let end = at; end < formula.length; end++) {
    if (formula[end] === "'") end++;
    else if (formula[end] === "[") depth++;
    else if (formula[end] === "]" && --depth === 0) return formula.slice(at, end + 1);
  }
  return formula.slice(at);
};

const tokenAt = (formula: string, at: number): Token => {
  if (formula[at] === "[") return { kind: "bracket", text: bracketFrom(formula, at) };
  ANY_TOKEN.lastIndex = at;
  const groups = ANY_TOKEN.exec(formula)?.groups ?? {};
  const kind = PATTERNS.map(([each]) => each).find((each) => groups[each] !== undefined) ?? "sign";
  return { kind, text: groups[kind] ?? formula.charAt(at) };
};

/** The tokens of a formula, with or without its equals sign. Any text has tokens, even one that is no formula. */
export const tokensOf = (formula: string): Token[] => {
  const tokens: Token[] = [];
  for (let at = 0; at < formula.length;) {
    const token = tokenAt(formula, at);
    tokens.push(token);
    at += token.text.length;
  }
  return tokens;
};

export const formulaOf = (tokens: readonly Token[]): string => tokens.map(({ text }) => text).join("");

/** Whether the token at an index is the name of a function that is called. */
export const isCall = (tokens: readonly Token[], index: number): boolean =>
  tokens[index]?.kind === "word" && tokens[index + 1]?.text === "(";
