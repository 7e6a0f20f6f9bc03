import { feetSpec } from "../../../../functions/measure/feet";
import { qualifiedName } from "../../../workbook/namespace";
import { closestWord } from "../../../help/closestWord";
import { isCall, tokensOf } from "../../../workbook/formulas/tokens";

/** The meanings of a spreadsheet's own errors, for errors without a message. Common practice, no published source. */
const MEANINGS: Readonly<Record<string, string>> = {
  "#SPILL!": "The result needs more blank cells: clear the cells below this one or to its right.",
  "#REF!": "A cell that the formula refers to was deleted.",
  "#DIV/0!": "The formula divides by 0 or by a blank cell.",
  "#N/A": "The formula can't find a value that it needs.",
  "#NUM!": "A number is too large or too small for the formula, or there is no answer.",
  "#VALUE!": `The formula needs another type of value, usually a number instead of text such as "5 each". ${qualifiedName(feetSpec)} converts a length such as 12' 6" to a number.`,
};

const lastPart = (name: string): string => name.slice(name.lastIndexOf(".") + 1);

/** The function that was probably meant: often only the prefix before the period is missing. */
const suggestionFor = (name: string, known: readonly string[]): string | undefined =>
  known.find((each) => lastPart(each) === name) ?? closestWord(name, known);

/** The names of the functions that a formula calls, in capitals. */
const functionsCalledBy = (formula: string): string[] => {
  const tokens = tokensOf(formula);
  return tokens.filter((_, index) => isCall(tokens, index)).map(({ text }) => text.toUpperCase());
};

const unknownName = (formula: string, known: readonly string[]): string => {
  const unknown = functionsCalledBy(formula).find((name) => !known.includes(name));
  if (unknown === undefined)
    return "The formula has an unknown name, text without quotes, or a missing comma.";
  const instead = suggestionFor(unknown, known);
  return `There is no function ${unknown}${instead === undefined ? "." : `: did you mean ${instead}?`}`;
};

/** What the spreadsheet's own error in a formula means; `known` are the full names of all functions. */
export const errorMeaning = (code: string, formula: string, known: readonly string[]): string =>
  code === "#NAME?" ? unknownName(formula, known) : (MEANINGS[code] ?? "");
