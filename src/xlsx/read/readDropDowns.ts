import type { DropDown } from "../book/book";
import { childOf, childrenOf, flagAttribute, type XmlElement } from "../xml/xml";

/** `$A$1:$A$4`, `Lists!$A$1:$A$4` or `'Old bid'!A1:A4`. */
const RANGE =
  /^(?:(?:'(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_.]*)!)?\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?$/u;
const LITERAL = /^"(.*)"$/s;

/** A list's choices, or the cells that hold them. Undefined where they take a calculation, or where the arrow is turned off. */
const readDropDown = (rule: XmlElement): DropDown | undefined => {
  // In the format, `showDropDown` means that the arrow is hidden.
  if (rule.attributes.get("type") !== "list" || flagAttribute(rule, "showDropDown")) return undefined;
  const ranges = (rule.attributes.get("sqref") ?? "").split(/\s+/).filter(Boolean);
  const list = childOf(rule, "formula1")?.text.trim() ?? "";
  const [, literal] = LITERAL.exec(list) ?? [];
  if (literal !== undefined)
    return {
      ranges,
      choices: literal
        .replaceAll('""', '"')
        .split(",")
        .map((word) => word.trim()),
    };
  return RANGE.test(list) ? { ranges, choices: [], from: list } : undefined;
};

/** The drop-down lists of a sheet's cells. */
export const readDropDowns = (sheet: XmlElement): readonly DropDown[] =>
  childrenOf(childOf(sheet, "dataValidations"), "dataValidation").flatMap((rule) => readDropDown(rule) ?? []);
