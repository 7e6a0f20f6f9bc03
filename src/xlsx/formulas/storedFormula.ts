import { NAMESPACE } from "../../workbook/namespace";
import { FUTURE_FUNCTIONS, FUTURE_WORKSHEET_FUNCTIONS } from "./futureFunctions";
import { formulaOf, isCall, tokensOf, type Token } from "../../workbook/formulas/tokens";

/**
 * The one place that knows how a file stores a formula differently from what is typed:
 * - a custom function is `_xldudf_GABLE_COURSES(...)` for `GABLE.COURSES(...)`; the prefix is documented; the underscore for
 *   the dot is known from public examples only, so check it in one real save before a release;
 * - a native function newer than the format (a future function) is `_xlfn.XLOOKUP(...)`, two of them `_xlfn._xlws.FILTER(...)`;
 * - a variable of LET or LAMBDA is `_xlpm.x`;
 * - there is no equals sign before it.
 */
const CUSTOM_PREFIX = `_xldudf_${NAMESPACE}_`;
const FUTURE_PREFIX = "_xlfn.";
const FUTURE_WORKSHEET_PREFIX = "_xlfn._xlws.";
const VARIABLE_PREFIX = "_xlpm.";

const startsWith = (text: string, start: string): boolean =>
  text.toLowerCase().startsWith(start.toLowerCase());

const isListed = (name: string): boolean =>
  FUTURE_FUNCTIONS.has(name) || FUTURE_WORKSHEET_FUNCTIONS.has(name);

const shownWord = (word: string): string => {
  if (startsWith(word, CUSTOM_PREFIX)) return `${NAMESPACE}.${word.slice(CUSTOM_PREFIX.length)}`;
  if (startsWith(word, VARIABLE_PREFIX)) return word.slice(VARIABLE_PREFIX.length);
  const prefix = [FUTURE_WORKSHEET_PREFIX, FUTURE_PREFIX].find((each) => startsWith(word, each));
  // A function that isn't on our list keeps its prefix, so that it is saved unchanged.
  if (prefix === undefined || !isListed(word.slice(prefix.length).toUpperCase())) return word;
  return word.slice(prefix.length);
};

/** A stored formula as it is shown, with the equals sign. */
export const shownFormula = (stored: string): string =>
  `=${formulaOf(tokensOf(stored).map((token) => (token.kind === "word" ? { ...token, text: shownWord(token.text) } : token)))}`;

/** The arguments of a call as token ranges; `end` is the index of the closing parenthesis. */
const argumentsOf = (tokens: readonly Token[], call: number): { parts: [number, number][]; end: number } => {
  const parts: [number, number][] = [];
  let depth = 0;
  let from = call + 2;
  for (let at = call + 1; at < tokens.length; at++) {
    const text = tokens[at]?.text;
    if (text === "(" || text === "{") depth++;
    if (text === ")" || text === "}") depth--;
    if ((text === "," && depth === 1) || depth === 0) {
      parts.push([from, at]);
      from = at + 1;
    }
    if (depth === 0) return { parts, end: at };
  }
  return { parts, end: tokens.length };
};

interface Scope {
  readonly from: number;
  readonly to: number;
  readonly names: ReadonlySet<string>;
}

/** The calls of LET and LAMBDA, with the variables each defines. */
const scopesOf = (tokens: readonly Token[]): Scope[] =>
  tokens.flatMap((token, call) => {
    const name = token.text.toUpperCase();
    if (!isCall(tokens, call) || (name !== "LET" && name !== "LAMBDA")) return [];
    const { parts, end } = argumentsOf(tokens, call);
    const named = parts.slice(0, -1).filter((_, index) => name === "LAMBDA" || index % 2 === 0);
    const names = named.map(([from, to]) =>
      formulaOf(tokens.slice(from, to))
        .replace(/[\s[\]]/g, "")
        .toLowerCase(),
    );
    return [{ from: call, to: end, names: new Set(names) }];
  });

const storedWord = (word: string): string => {
  const upper = word.toUpperCase();
  if (startsWith(word, `${NAMESPACE}.`)) return CUSTOM_PREFIX + upper.slice(NAMESPACE.length + 1);
  if (FUTURE_WORKSHEET_FUNCTIONS.has(upper)) return FUTURE_WORKSHEET_PREFIX + upper;
  return FUTURE_FUNCTIONS.has(upper) ? FUTURE_PREFIX + upper : word;
};

/** A typed formula as a file stores it. */
export const storedFormula = (shown: string): string => {
  const tokens = tokensOf(shown.replace(/^\s*=/, ""));
  const scopes = scopesOf(tokens);
  const isVariable = (text: string, at: number): boolean =>
    scopes.some(({ from, to, names }) => at > from && at < to && names.has(text.toLowerCase()));
  return formulaOf(
    tokens.map((token, at) => {
      if (token.kind !== "word") return token;
      if (isVariable(token.text, at)) return { ...token, text: VARIABLE_PREFIX + token.text };
      return isCall(tokens, at) ? { ...token, text: storedWord(token.text) } : token;
    }),
  );
};

/** The first part of a formula that we can't store; undefined where all of it can be stored. */
export const unwritablePart = (shown: string): string | undefined => {
  const tokens = tokensOf(shown);
  const odd = tokens.find(
    ({ kind, text }) =>
      (kind === "sign" && (text === "@" || text === "#")) || (kind === "bracket" && /@/.test(text)),
  );
  return odd?.text;
};
