import { a1 } from "../../workbook/address";
import type { InputPrompt } from "../../workbook/printableSheet";
import type { DropDown } from "../book/book";
import { changeElement, insertInOrder, SHEET_ORDER } from "../xml/elementOrder";
import type { Splice } from "../xml/splices";
import { childOf } from "../xml/xml";
import { attributesText, escapeXml } from "../xml/xmlText";
import type { SheetVersions } from "./sheetFrame";

const dropDownText = ({ ranges, choices }: DropDown, x: string): string => {
  const attributes = attributesText({
    type: "list",
    errorStyle: "warning",
    allowBlank: 1,
    showErrorMessage: 1,
    sqref: ranges.join(" "),
  });
  return `<${x}dataValidation${attributes}><${x}formula1>${escapeXml(`"${choices.join(",").replaceAll('"', '""')}"`)}</${x}formula1></${x}dataValidation>`;
};

/** An input may be a number or a tape measure's text, so the rule only asks for a digit in it. */
const entryText = ({ at, title, prompt }: InputPrompt, x: string): string => {
  const attributes = attributesText({
    type: "custom",
    errorStyle: "warning",
    allowBlank: 1,
    showInputMessage: 1,
    showErrorMessage: 1,
    errorTitle: "Not a number",
    error: "This has no digits. Keep it?",
    promptTitle: title,
    prompt,
    sqref: a1(at),
  });
  const hasDigit = `SUMPRODUCT(--ISNUMBER(FIND(ROW($1:$10)-1,${a1(at)})))>0`;
  return `<${x}dataValidation${attributes}><${x}formula1>${escapeXml(hasDigit)}</${x}formula1></${x}dataValidation>`;
};

export const validationChanges = ({ part, before, now, x }: SheetVersions): Splice[] => {
  const known = new Set(before.dropDowns.map((each) => JSON.stringify(each)));
  const added = [
    ...now.dropDowns.filter((each) => !known.has(JSON.stringify(each))).map((each) => dropDownText(each, x)),
    ...(now.entries ?? []).map((entry) => entryText(entry, x)),
  ];
  if (added.length === 0) return [];
  const { source, root } = part;
  const text = added.join("");
  const old = childOf(root, "dataValidations");
  if (old)
    return [
      changeElement(source, old, {
        attributes: { count: String(old.children.length + added.length) },
        append: text,
      }),
    ];
  return [
    insertInOrder(
      root,
      SHEET_ORDER,
      "dataValidations",
      `<${x}dataValidations count="${added.length}">${text}</${x}dataValidations>`,
    ),
  ];
};
