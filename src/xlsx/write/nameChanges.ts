import type { BookName } from "../book/book";
import { changeElement, insertInOrder, prefixOf, removeElement, WORKBOOK_ORDER } from "../xml/elementOrder";
import { storedFormula } from "../formulas/storedFormula";
import { isBuiltInName } from "../read/readBook";
import type { Splice } from "../xml/splices";
import type { WorkbookParts } from "../package/workbookParts";
import { childOf, childrenOf, numberAttribute, type XmlPart } from "../xml/xml";
import { attributesText, escapeXml } from "../xml/xmlText";

const nameKey = ({ name, sheet }: BookName): string => `${name.toLowerCase()}\n${sheet ?? ""}`;

/** The changes of the defined names: added, redefined and deleted ones. */
export const nameChanges = (
  { source, root }: XmlPart,
  workbook: WorkbookParts,
  before: readonly BookName[],
  now: readonly BookName[],
): Splice[] => {
  const x = prefixOf(root);
  const was = new Map(before.map((name) => [nameKey(name), name.target]));
  const is = new Map(now.map((name) => [nameKey(name), name]));
  const list = childOf(root, "definedNames");
  const inside: Splice[] = [];
  for (const element of childrenOf(list, "definedName")) {
    const name = element.attributes.get("name") ?? "";
    const sheet = workbook.sheets[numberAttribute(element, "localSheetId") ?? -1]?.name;
    const key = nameKey({ name, target: "", ...(sheet !== undefined && { sheet }) });
    if (isBuiltInName(name) || !was.has(key)) continue;
    const present = is.get(key);
    if (!present) inside.push(removeElement(element));
    else if (present.target !== was.get(key))
      inside.push({
        start: element.innerStart,
        end: element.innerEnd,
        text: escapeXml(storedFormula(present.target)),
      });
  }
  const order = [...workbook.sheets.map(({ name }) => name)];
  const added = now
    .filter((name) => !was.has(nameKey(name)))
    .map(({ name, sheet, target }) => {
      const index = sheet === undefined ? undefined : order.indexOf(sheet);
      return `<${x}definedName${attributesText({ name, localSheetId: index })}>${escapeXml(storedFormula(target))}</${x}definedName>`;
    })
    .join("");
  if (added === "" && inside.length === 0) return [];
  if (list) return [changeElement(source, list, { inside, append: added })];
  return [
    insertInOrder(root, WORKBOOK_ORDER, "definedNames", `<${x}definedNames>${added}</${x}definedNames>`),
  ];
};
