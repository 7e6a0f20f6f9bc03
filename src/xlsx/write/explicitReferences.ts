import { a1 } from "../../workbook/address";
import { changeElement } from "../xml/elementOrder";
import { cellElements, rowElements } from "../read/sheetCells";
import type { Splice } from "../xml/splices";
import { childOf, type XmlPart } from "../xml/xml";

/** Rows and cells may leave out where they stand; before others are put between them, they have to say it. */
export const explicitReferences = ({ source, root }: XmlPart): Splice[] =>
  rowElements(childOf(root, "sheetData")).flatMap((found) => {
    const { row, element } = found;
    const inside = cellElements(found)
      .filter((cell) => !cell.element.attributes.has("r"))
      .map((cell) => changeElement(source, cell.element, { attributes: { r: a1(cell) } }));
    if (inside.length === 0 && element.attributes.has("r")) return [];
    return [changeElement(source, element, { attributes: { r: String(row + 1) }, inside })];
  });
