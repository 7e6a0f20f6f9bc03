import { LAST_CELL } from "../../../workbook/address";
import type { AnchorPoint, FilePicture } from "../../book/book";
import { pxOfEmu } from "../../styles/sizes";
import { childOf, numberAttribute, type XmlElement } from "../../xml/xml";
import { Unsupported, requireSupported, orUnsupported } from "./unsupported";

/** The format's limit for a length, in EMU. */
const LONGEST_EMU = 2 ** 31;

const within = (number: number, least: number, most: number): number => {
  requireSupported(number >= least && number <= most);
  return number;
};

const inText = (element: XmlElement | undefined, name: string, least: number, most: number): number => {
  const text = childOf(element, name)?.text.trim() ?? "";
  return within(text === "" ? NaN : Number(text), least, most);
};

const index = (element: XmlElement | undefined, name: string, last: number): number => {
  const number = inText(element, name, 0, last);
  requireSupported(Number.isInteger(number));
  return number;
};

/** Rounding in some programs makes a tiny negative offset. */
const offsetPx = (element: XmlElement | undefined, name: string): number =>
  Math.max(0, pxOfEmu(inText(element, name, -LONGEST_EMU, LONGEST_EMU)));

const spot = (anchor: XmlElement, name: "from" | "to"): AnchorPoint => {
  const element = childOf(anchor, name);
  return {
    row: index(element, "row", LAST_CELL.row),
    column: index(element, "col", LAST_CELL.column),
    offsetPx: { x: offsetPx(element, "colOff"), y: offsetPx(element, "rowOff") },
  };
};

const lengthPx = (element: XmlElement | undefined, name: string, leastEmu: number): number =>
  pxOfEmu(within(orUnsupported(numberAttribute(element, name)), leastEmu, LONGEST_EMU));

const size = (anchor: XmlElement): { readonly widthPx: number; readonly heightPx: number } => {
  const element = childOf(anchor, "ext");
  return { widthPx: lengthPx(element, "cx", 1), heightPx: lengthPx(element, "cy", 1) };
};

const isBehind = (from: AnchorPoint, to: AnchorPoint): boolean =>
  (to.row > from.row || (to.row === from.row && to.offsetPx.y > from.offsetPx.y)) &&
  (to.column > from.column || (to.column === from.column && to.offsetPx.x > from.offsetPx.x));

/** The position of an anchored object over the cells. */
export const readAnchor = (anchor: XmlElement): Pick<FilePicture, "from" | "to"> => {
  switch (anchor.name) {
    case "twoCellAnchor": {
      const [from, to] = [spot(anchor, "from"), spot(anchor, "to")];
      requireSupported(isBehind(from, to));
      return { from, to };
    }
    case "oneCellAnchor":
      return { from: spot(anchor, "from"), to: size(anchor) };
    case "absoluteAnchor": {
      const element = childOf(anchor, "pos");
      const corner = { x: lengthPx(element, "x", 0), y: lengthPx(element, "y", 0) };
      return { from: { row: 0, column: 0, offsetPx: corner }, to: size(anchor) };
    }
    default:
      throw new Unsupported();
  }
};
