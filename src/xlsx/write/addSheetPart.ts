import type { BookSheet } from "../book/book";
import { changeElement, prefixOf } from "../xml/elementOrder";
import { EMPTY_SHEET, WORKSHEET_CONTENT_TYPE } from "../package/emptyPackage";
import { FileError } from "../book/fileError";
import type { PackageDraft } from "../package/packageDraft";
import { childOf, numberAttribute } from "../xml/xml";
import { attributesText } from "../xml/xmlText";

const RELATIONSHIPS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

/** Adds a blank sheet to a package. Returns the path of its part. */
export const addSheetPart = (
  draft: PackageDraft,
  workbookPath: string,
  { name, isHidden }: BookSheet,
): string => {
  const path = draft.freePath("xl/worksheets/sheet", ".xml");
  draft.add(path, WORKSHEET_CONTENT_TYPE, EMPTY_SHEET);
  const id = draft.addRelationship(workbookPath, "worksheet", path);
  draft.edit(workbookPath, ({ source, root }) => {
    const list = childOf(root, "sheets");
    if (!list) throw new FileError("The file's workbook has no list of sheets.");
    const x = prefixOf(root);
    const numbers = list.children.map((sheet) => numberAttribute(sheet, "sheetId") ?? 0);
    const attributes = {
      name,
      sheetId: Math.max(0, ...numbers) + 1,
      state: isHidden ? "hidden" : undefined,
      "r:id": id,
    };
    // The prefix is declared here, because the part may use another.
    return [
      changeElement(source, list, {
        append: `<${x}sheet xmlns:r="${RELATIONSHIPS}"${attributesText(attributes)}/>`,
      }),
    ];
  });
  return path;
};
