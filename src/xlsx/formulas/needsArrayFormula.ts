import { catalog } from "../../../functions/index";
import { qualifiedName } from "../../workbook/namespace";
import { isCall, tokensOf, type Token } from "../../workbook/formulas/tokens";

/** Functions that take a whole range as one argument: no spreadsheet reduces a range in them to one cell. */
const TAKES_RANGES: ReadonlySet<string> = new Set(
  `SUM SUMIF SUMIFS SUMPRODUCT SUMSQ AVERAGE AVERAGEA AVERAGEIF AVERAGEIFS COUNT COUNTA COUNTBLANK COUNTIF COUNTIFS MAX MAXA MAXIFS MIN
  MINA MINIFS MEDIAN MODE PRODUCT STDEV STDEVP VAR VARP LARGE SMALL RANK PERCENTILE QUARTILE INDEX MATCH XMATCH VLOOKUP HLOOKUP LOOKUP XLOOKUP
  ROWS COLUMNS AND OR XOR CONCAT TEXTJOIN SUBTOTAL AGGREGATE NPV IRR AREAS OFFSET`.split(/\s+/),
);

/** Native functions that may return an array. */
const ANSWERS_BLOCKS: ReadonlySet<string> = new Set(
  `FILTER SORT SORTBY UNIQUE SEQUENCE RANDARRAY MAP BYROW BYCOL SCAN MAKEARRAY REDUCE LET LAMBDA VSTACK HSTACK TOCOL TOROW WRAPROWS WRAPCOLS TAKE DROP EXPAND
  CHOOSEROWS CHOOSECOLS TEXTSPLIT TRANSPOSE MMULT MINVERSE MUNIT FREQUENCY LINEST LOGEST TREND GROWTH OFFSET INDIRECT CHOOSE`.split(
    /\s+/,
  ),
);

const tables = new Set(catalog.filter(({ columns }) => columns !== undefined).map(qualifiedName));
const custom = new Set(catalog.map(qualifiedName));

/** For each token, the function it is an argument of; empty where it is in none. */
const enclosing = (tokens: readonly Token[]): string[] => {
  const open: string[] = [];
  return tokens.map(({ text }, at) => {
    if (text === ")") open.pop();
    const inside = open.at(-1) ?? "";
    if (text === "(") open.push(isCall(tokens, at - 1) ? (tokens[at - 1]?.text.toUpperCase() ?? "") : "");
    return inside;
  });
};

const OPERATOR = /^[-+*/^&=<>%]$/;

/**
 * Whether a formula must be stored as an array formula even though it shows a single value now. A plain formula in a file
 * reduces a range to one cell wherever it needs one value (implicit intersection). If in doubt, yes: it changes nothing else.
 */
export const needsArrayFormula = (formula: string): boolean => {
  const tokens = tokensOf(formula.replace(/^\s*=/, "")).filter(({ kind }) => kind !== "space");
  const inside = enclosing(tokens);
  const isRange = (at: number): boolean =>
    tokens[at]?.text === ":" ||
    (tokens[at]?.kind === "reference" && (tokens[at]?.text.includes(":") ?? false));
  return tokens.some(({ kind, text }, at) => {
    const name = text.toUpperCase();
    const holder = inside[at] ?? "";
    const isTaken = TAKES_RANGES.has(holder) || custom.has(holder);
    if (text === "{") return !isTaken;
    if (isCall(tokens, at) && (ANSWERS_BLOCKS.has(name) || tables.has(name))) return !isTaken;
    if (!isRange(at)) return kind === "bracket" && !isTaken;
    const [before, after] =
      text === ":" ? [tokens[at - 2], tokens[at + 2]] : [tokens[at - 1], tokens[at + 1]];
    return !isTaken || OPERATOR.test(before?.text ?? "") || OPERATOR.test(after?.text ?? "");
  });
};
