/**
 * A formula cut into what must be told apart to rewrite it: texts and quoted sheet names are never touched, nor what stands in
 * the brackets of a table's columns. Joined together, the tokens are the formula again.
 */
export interface Token {
  readonly kind: "text" | "quoted" | "bracket" | "word" | "reference" | "number" | "space" | "sign";
  readonly text: string;
}

const PATTERN =
  /(?<text>"(?:[^"]|"")*")|(?<quoted>'(?:[^']|'')*')|(?<sign1>#(?:REF!|N\/A|NAME\?|VALUE!|DIV\/0!|NUM!|NULL!|SPILL!|CALC!|GETTING_DATA))|(?<reference>\$?[A-Za-z]{1,3}\$?[0-9]{1,7}(?![\w.(\\!\[])|\$?[A-Za-z]{1,3}:\$?[A-Za-z]{1,3}(?![\w.(\\!\[])|\$?[0-9]{1,7}:\$?[0-9]{1,7}(?![\w.]))|(?<number>(?:[0-9]+\.?[0-9]*|\.[0-9]+)(?:[Ee][+-]?[0-9]+)?)|(?<word>[\p{L}_\\][\p{L}\p{N}_.\\?]*)|(?<space>\s+)|(?<sign2>[^])/uy;

/** The bracketed part that begins at `at`, with the brackets inside it; in it an apostrophe makes the next sign plain. */
const bracketFrom = (formula: string, at: number): string => {
  let depth = 0;
  for (let end = at; end < formula.length; end++) {
    if (formula[end] === "'") end++;
    else if (formula[end] === "[") depth++;
    else if (formula[end] === "]" && --depth === 0) return formula.slice(at, end + 1);
  }
  return formula.slice(at);
};

const KINDS = ["text", "quoted", "reference", "number", "word", "space"] as const;

export const tokensOf = (formula: string): Token[] => {
  const tokens: Token[] = [];
  for (let at = 0; at < formula.length;) {
    if (formula[at] === "[") {
      const text = bracketFrom(formula, at);
      tokens.push({ kind: "bracket", text });
      at += text.length;
      continue;
    }
    PATTERN.lastIndex = at;
    const match = PATTERN.exec(formula);
    const text = match?.[0] ?? formula.charAt(at);
    tokens.push({ kind: KINDS.find((kind) => match?.groups?.[kind] !== undefined) ?? "sign", text });
    at += text.length;
  }
  return tokens;
};

export const formulaOf = (tokens: readonly Token[]): string => tokens.map(({ text }) => text).join("");

/** Whether the word at an index is a function's name. */
export const isCall = (tokens: readonly Token[], index: number): boolean =>
  tokens[index]?.kind === "word" && tokens[index + 1]?.text === "(";
