import { a1 } from "../../workbook/address";
import { changeElement } from "../xml/elementOrder";
import { cellElements, rowElements } from "../read/sheetCells";
import type { Splice } from "../xml/splices";
import { childOf, type XmlPart } from "../xml/xml";

/** Gives rows and cells without a reference (`r`) one, so that others can be inserted between them. */
export const explicitReferences = ({ source, root }: XmlPart): Splice[] =>
  rowElements(childOf(root, "sheetData")).flatMap((found) => {
    const { row, element } = found;
    const inside = cellElements(found)
      .filter((cell) => !cell.element.attributes.has("r"))
      .map((cell) => changeElement(source, cell.element, { attributes: { r: a1(cell) } }));
    if (inside.length === 0 && element.attributes.has("r")) return [];
    return [changeElement(source, element, { attributes: { r: String(row + 1) }, inside })];
  });
