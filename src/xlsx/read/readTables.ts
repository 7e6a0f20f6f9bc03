import type { BookTable } from "../book/book";
import { relationshipsOf } from "../package/relationships";
import { childOf, childrenOf, numberAttribute, parseXml, type XmlElement } from "../xml/xml";
import { unescapeCellText } from "../xml/xmlText";
import type { Parts } from "../package/zip";

/** Whether a filter that stands in a sheet or a table leaves rows out. */
export const hidesRows = (holder: XmlElement): boolean =>
  // A column may be listed without any rule, for its button alone.
  childrenOf(childOf(holder, "autoFilter"), "filterColumn").some(({ children }) => children.length > 0);

/** The tables of a sheet, which stand in parts of their own. */
export const readTables = (parts: Parts, sheetPath: string): BookTable[] =>
  relationshipsOf(parts, sheetPath).flatMap(({ kind, target }) => {
    const bytes = kind === "table" ? parts.get(target) : undefined;
    if (!bytes) return [];
    const { root } = parseXml(bytes, target);
    return [
      {
        // Formulas say this one; the attribute `name` is the program's own.
        name: root.attributes.get("displayName") ?? "",
        range: root.attributes.get("ref") ?? "",
        columns: childrenOf(childOf(root, "tableColumns"), "tableColumn").map(({ attributes }) =>
          unescapeCellText(attributes.get("name") ?? ""),
        ),
        hasHeadings: (numberAttribute(root, "headerRowCount") ?? 1) > 0,
        hasTotals: (numberAttribute(root, "totalsRowCount") ?? 0) > 0,
        hidesRows: hidesRows(root),
      },
    ];
  });
