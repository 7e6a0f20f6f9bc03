import { FileError } from "../book/fileError";
import { relationshipsOf, type Relationship } from "./relationships";
import { childOf, childrenOf, flagAttribute, parseXml, type XmlElement } from "../xml/xml";
import type { Parts } from "./zip";

export interface SheetEntry {
  readonly name: string;
  readonly path: string;
  readonly isHidden: boolean;
  /** False for chart sheets, dialog sheets and old macro sheets. */
  readonly hasCells: boolean;
}

/** The parts of a workbook in its package. */
export interface WorkbookParts {
  readonly path: string;
  readonly root: XmlElement;
  readonly sheets: readonly SheetEntry[];
  readonly relationships: readonly Relationship[];
}

const STRICT = "http://purl.oclc.org/ooxml/";

const workbookPath = (parts: Parts): string => {
  if (!parts.has("[Content_Types].xml"))
    throw new FileError("This zip file isn't an .xlsx workbook: it has no list of its parts.");
  const main = relationshipsOf(parts, "").find(({ kind }) => kind === "officeDocument");
  if (!main || !parts.has(main.target)) throw new FileError("This file has no workbook in it.");
  if (main.target.toLowerCase().endsWith(".bin"))
    throw new FileError("This is a binary workbook (.xlsb). Save it as .xlsx first.");
  if (main.type.startsWith(STRICT))
    throw new FileError(
      "This workbook is in the strict variant of the format. Save it as a regular .xlsx first.",
    );
  return main.target;
};

export const workbookParts = (parts: Parts): WorkbookParts => {
  const path = workbookPath(parts);
  const { root } = parseXml(parts.get(path) ?? new Uint8Array(), path);
  if (root.name !== "workbook")
    throw new FileError("This file has no workbook in it: it may be another kind of document.");
  if (flagAttribute(childOf(root, "workbookPr"), "date1904"))
    throw new FileError(
      "This workbook uses the 1904 date system, which isn't supported. In Excel's options, turn it off, check the dates, and save the workbook again.",
    );
  const relationships = relationshipsOf(parts, path);
  const sheets = childrenOf(childOf(root, "sheets"), "sheet").map(({ attributes }) => {
    // The prefix of `r:id` may differ between files.
    const id = [...attributes].find(([name]) => /(?:^|:)id$/.test(name))?.[1];
    const relationship = relationships.find((each) => each.id === id);
    if (!relationship || !parts.has(relationship.target))
      throw new FileError(`The file has no part for its sheet "${attributes.get("name") ?? ""}".`);
    return {
      name: attributes.get("name") ?? "",
      path: relationship.target,
      isHidden: (attributes.get("state") ?? "visible") !== "visible",
      hasCells: relationship.kind === "worksheet",
    };
  });
  return { path, root, sheets, relationships };
};

/** The workbook's part of a kind, such as its styles. */
export const partOfKind = ({ relationships }: WorkbookParts, kind: string): string | undefined =>
  relationships.find((each) => each.kind === kind && !each.isExternal)?.target;
