import type { PackageDraft } from "../package/packageDraft";
import { changeElement, prefixOf } from "../xml/elementOrder";
import { FileError } from "../book/fileError";
import { childOf, childrenOf, descendantsOf, numberAttribute } from "../xml/xml";

/**
 * A formula that spills is stored as an array formula over its spill range. Cell metadata marks it as a dynamic array, whose
 * range is recalculated ([MS-XLSX] 2.2.4, XLDAPR). A reader that doesn't know the mark still has every value.
 */
const TYPE = `<metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/>`;
const METADATA = `<metadata xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray"><metadataTypes count="1">${TYPE}</metadataTypes><futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata><cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>`;

const CONTENT_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml";

/** The index (`cm`) by which a cell refers to the mark. Adds the mark to the package where it has none. */
export const dynamicArrayMark = (
  draft: PackageDraft,
  workbookPath: string,
  metadataPath: string | undefined,
): string => {
  if (metadataPath === undefined) {
    const path = draft.freePath("xl/metadata", ".xml");
    draft.add(path, CONTENT_TYPE, METADATA);
    draft.addRelationship(workbookPath, "sheetMetadata", path);
    return "1";
  }
  const { root } = draft.read(metadataPath);
  const types = childrenOf(childOf(root, "metadataTypes"), "metadataType");
  const type = types.findIndex(({ attributes }) => attributes.get("name") === "XLDAPR") + 1;
  const list = childOf(root, "cellMetadata");
  const dynamic = childrenOf(root, "futureMetadata")
    .find(({ attributes }) => attributes.get("name") === "XLDAPR")
    ?.children.findIndex(
      (block) => descendantsOf(block, "dynamicArrayProperties")[0]?.attributes.get("fDynamic") === "1",
    );
  if (type === 0 || dynamic === undefined || dynamic < 0)
    throw new FileError(
      "The workbook has metadata of another kind. A formula that spills can't be added to it yet.",
    );
  const there = childrenOf(list, "bk").findIndex(({ children }) =>
    children.some((rc) => numberAttribute(rc, "t") === type && numberAttribute(rc, "v") === dynamic),
  );
  if (there >= 0) return String(there + 1);
  const x = prefixOf(root);
  const block = `<${x}bk><${x}rc t="${type}" v="${dynamic}"/></${x}bk>`;
  const count = (list?.children.length ?? 0) + 1;
  draft.edit(metadataPath, ({ source, root: whole }) => {
    const element = childOf(whole, "cellMetadata");
    return element
      ? [changeElement(source, element, { attributes: { count: String(count) }, append: block })]
      : [];
  });
  if (!list)
    throw new FileError(
      "The workbook has metadata of another kind. A formula that spills can't be added to it yet.",
    );
  return String(count);
};
