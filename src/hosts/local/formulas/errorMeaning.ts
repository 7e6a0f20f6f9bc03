import { feetSpec } from "../../../../functions/measure/feet";
import { qualifiedName } from "../../../workbook/namespace";
import { closestWord } from "../../../help/closestWord";
import { isCall, tokensOf } from "../../../workbook/formulas/tokens";

/** What a spreadsheet's own error means, where no function has words for it. Common practice, no published source. */
const MEANINGS: Readonly<Record<string, string>> = {
  "#SPILL!": "The answer needs more cells than are blank: clear what stands below or beside this one.",
  "#REF!": "A cell that the formula read is gone.",
  "#DIV/0!": "The formula divides by 0, or by a blank cell.",
  "#N/A": "A value that the formula needs isn't there.",
  "#NUM!": "A number is too large or too small for the formula, or there is no answer.",
  "#VALUE!": `The formula needs another kind of value, mostly a number where a text such as "5 each" stands. Of a length such as 12' 6" ${qualifiedName(feetSpec)} makes a number.`,
};

const lastPart = (name: string): string => name.slice(name.lastIndexOf(".") + 1);

/** The function that a person may have meant: often only what stands before the point is missing. */
const suggestionFor = (name: string, known: readonly string[]): string | undefined =>
  known.find((each) => lastPart(each) === name) ?? closestWord(name, known);

/** The names of the functions that a formula calls, in capitals. */
const calledIn = (formula: string): string[] => {
  const tokens = tokensOf(formula);
  return tokens.filter((_, index) => isCall(tokens, index)).map(({ text }) => text.toUpperCase());
};

const unknownName = (formula: string, known: readonly string[]): string => {
  const unknown = calledIn(formula).find((name) => !known.includes(name));
  if (unknown === undefined)
    return "A name in the formula isn't known, a text stands in it without quotes, or a comma is missing.";
  const instead = suggestionFor(unknown, known);
  return `There is no function ${unknown}${instead === undefined ? "." : `: did you mean ${instead}?`}`;
};

/** In a sentence, what an error means that the spreadsheet itself gives to a formula; `known` are all functions by their whole names. */
export const errorMeaning = (code: string, formula: string, known: readonly string[]): string =>
  code === "#NAME?" ? unknownName(formula, known) : (MEANINGS[code] ?? "");
