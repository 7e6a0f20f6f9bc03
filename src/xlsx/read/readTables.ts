import type { BookTable } from "../book/book";
import { relationshipsOf } from "../package/relationships";
import { childOf, childrenOf, numberAttribute, parseXml, type XmlElement } from "../xml/xml";
import { unescapeCellText } from "../xml/xmlText";
import type { Parts } from "../package/zip";

/** Whether the filter of a sheet or a table hides rows. */
export const hidesRows = (holder: XmlElement): boolean =>
  // A column may be listed without a rule, for its filter button alone.
  childrenOf(childOf(holder, "autoFilter"), "filterColumn").some(({ children }) => children.length > 0);

/** The tables of a sheet. Each has a part of its own. */
export const readTables = (parts: Parts, sheetPath: string): BookTable[] =>
  relationshipsOf(parts, sheetPath).flatMap(({ kind, target }) => {
    const bytes = kind === "table" ? parts.get(target) : undefined;
    if (!bytes) return [];
    const { root } = parseXml(bytes, target);
    return [
      {
        // Formulas use `displayName`; the attribute `name` is internal.
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
