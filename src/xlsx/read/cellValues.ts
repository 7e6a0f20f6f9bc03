import { CellError, type Cell } from "../../../shared/cell";
import { childOf, childrenOf, type XmlElement } from "../xml/xml";
import { unescapeCellText } from "../xml/xmlText";

/** The plain text of a rich text element. Phonetic text is left out. */
export const plainText = (element: XmlElement | undefined): string => {
  const pieces = element?.children.filter(({ name }) => name === "t" || name === "r") ?? [];
  return pieces
    .map((piece) => (piece.name === "t" ? piece : childOf(piece, "t"))?.text ?? "")
    .map(unescapeCellText)
    .join("");
};

export const readSharedStrings = (root: XmlElement): string[] => childrenOf(root, "si").map(plainText);

/** A cell's value, or its formula's cached result. */
export const readCellValue = (cell: XmlElement, sharedTexts: readonly string[]): Cell => {
  const type = cell.attributes.get("t") ?? "n";
  if (type === "inlineStr") return plainText(childOf(cell, "is"));
  const raw = childOf(cell, "v")?.text;
  if (raw === undefined) return null;
  switch (type) {
    case "s":
      return sharedTexts[Number(raw)] ?? "";
    case "str":
      return unescapeCellText(raw);
    case "b":
      return raw.trim() === "1" || raw.trim() === "true";
    case "e":
      return new CellError(raw.trim(), "");
    case "d":
      return raw;
    default:
      return raw.trim() === "" || Number.isNaN(Number(raw)) ? null : Number(raw);
  }
};
