import type { DropDown } from "../book/book";
import { childOf, childrenOf, flagAttribute, type XmlElement } from "../xml/xml";

/** `$A$1:$A$4`, `Lists!$A$1:$A$4` or `'Old bid'!A1:A4`. */
const RANGE =
  /^(?:(?:'(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_.]*)!)?\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?$/u;
const LITERAL = /^"(.*)"$/s;

/** The words of a list, or where they stand; undefined where that takes a calculation, or the arrow is switched off. */
const readDropDown = (rule: XmlElement): DropDown | undefined => {
  // The format's word for an arrow that isn't shown is this one.
  if (rule.attributes.get("type") !== "list" || flagAttribute(rule, "showDropDown")) return undefined;
  const ranges = (rule.attributes.get("sqref") ?? "").split(/\s+/).filter(Boolean);
  const list = childOf(rule, "formula1")?.text.trim() ?? "";
  const [, words] = LITERAL.exec(list) ?? [];
  if (words !== undefined)
    return {
      ranges,
      choices: words
        .replaceAll('""', '"')
        .split(",")
        .map((word) => word.trim()),
    };
  return RANGE.test(list) ? { ranges, choices: [], from: list } : undefined;
};

/** The lists that a sheet's cells offer. */
export const readDropDowns = (sheet: XmlElement): readonly DropDown[] =>
  childrenOf(childOf(sheet, "dataValidations"), "dataValidation").flatMap((rule) => readDropDown(rule) ?? []);
