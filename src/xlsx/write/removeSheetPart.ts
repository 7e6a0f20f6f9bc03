import type { PackageDraft } from "../package/packageDraft";
import { partOfKind, workbookParts, type SheetEntry } from "../package/workbookParts";
import { changeElement, removeElement } from "../xml/elementOrder";
import type { Splice } from "../xml/splices";
import { childOf, childrenOf, numberAttribute, type XmlElement } from "../xml/xml";

/** Updates or removes a sheet-scoped name once the sheet at index `gone` is deleted. */
const nameAfter = (source: string, element: XmlElement, gone: number): Splice[] => {
  const place = numberAttribute(element, "localSheetId");
  if (place === undefined || place < gone) return [];
  if (place === gone) return [removeElement(element)];
  return [changeElement(source, element, { attributes: { localSheetId: String(place - 1) } })];
};

/** The file still opens on the same sheet, or on the first visible one where that sheet is deleted. */
const viewAfter = (
  source: string,
  element: XmlElement,
  sheets: readonly SheetEntry[],
  gone: number,
): Splice => {
  const left = sheets.filter((_, at) => at !== gone);
  const was = sheets[numberAttribute(element, "activeTab") ?? 0];
  const active = was && left.includes(was) ? left.indexOf(was) : left.findIndex(({ isHidden }) => !isHidden);
  return changeElement(source, element, {
    attributes: { activeTab: String(Math.max(0, active)), firstSheet: undefined },
  });
};

/** Removes a sheet from a package, with its sheet-scoped names and the parts that only it leads to. */
export const removeSheetPart = (draft: PackageDraft, workbookPath: string, lowerName: string): void => {
  const workbook = workbookParts(draft.result());
  const index = workbook.sheets.findIndex(({ name }) => name.toLowerCase() === lowerName);
  const sheet = workbook.sheets[index];
  if (!sheet) return;
  draft.edit(workbookPath, ({ source, root }) => [
    ...childrenOf(childOf(root, "sheets"), "sheet")
      .filter((_, at) => at === index)
      .map(removeElement),
    ...childrenOf(childOf(root, "definedNames"), "definedName").flatMap((element) =>
      nameAfter(source, element, index),
    ),
    ...childrenOf(childOf(root, "bookViews"), "workbookView").map((element) =>
      viewAfter(source, element, workbook.sheets, index),
    ),
  ]);
  draft.remove(workbookPath, sheet.path);
  // It lists the sheet's cells. Every reader rebuilds it.
  const chain = partOfKind(workbook, "calcChain");
  if (chain !== undefined && draft.has(chain)) draft.remove(workbookPath, chain);
};
