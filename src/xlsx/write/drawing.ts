import type { Figure, Mark } from "../../pictures/figure";
import type { PicturePoint } from "../../pictures/picturePoint";
import type { CellAddress } from "../../workbook/address";
import { emuOfPx as emu } from "../styles/sizes";
import { changeElement, insertInOrder, prefixOf, SHEET_ORDER } from "../xml/elementOrder";
import type { PackageDraft } from "../package/packageDraft";
import { RELATIONSHIP_TYPES, relationshipsOf } from "../package/relationships";
import { attributesText, escapeXml } from "../xml/xmlText";

const CONTENT_TYPE = "application/vnd.openxmlformats-officedocument.drawing+xml";
const DRAWING = "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing";
const MAIN = "http://schemas.openxmlformats.org/drawingml/2006/main";

const INK = "1D2B32";
const FILLS = { metal: "E3EBEE", wall: "F4F1EA", pointer: "8C2416" } as const;
const WEIGHTS = { edge: 2, thin: 0.75, dashed: 1 } as const;
const DIMENSION_WEIGHT = 0.75;
/** In hundredths of a point. */
const WORD_SIZE = 1000;
const WORD_HEIGHT = 18;
/** Generous, so that no reader wraps the text; it is centered anyway. */
const PX_PER_LETTER = 9;

const lineText = (weightPx: number, more = ""): string =>
  `<a:ln w="${emu(weightPx)}"><a:solidFill><a:srgbClr val="${INK}"/></a:solidFill>${more}</a:ln>`;

/** A shape, named by its id. */
const shape = (id: number, properties: string, body = ""): string =>
  `<xdr:sp macro="" textlink=""><xdr:nvSpPr><xdr:cNvPr id="${id}" name="${id}"/><xdr:cNvSpPr${body === "" ? "" : ' txBox="1"'}/></xdr:nvSpPr><xdr:spPr>${properties}</xdr:spPr>${body}</xdr:sp>`;

const place = (left: number, top: number, width: number, height: number, isRising = false): string =>
  `<a:xfrm${isRising ? ' flipV="1"' : ""}><a:off x="${emu(left)}" y="${emu(top)}"/><a:ext cx="${emu(width)}" cy="${emu(height)}"/></a:xfrm>`;

const boundsOf = (
  spots: readonly PicturePoint[],
): { left: number; top: number; width: number; height: number } => {
  const [xs, ys] = [spots.map(({ x }) => x), spots.map(({ y }) => y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  return { left, top, width: Math.max(...xs) - left, height: Math.max(...ys) - top };
};

const segment = (id: number, from: PicturePoint, to: PicturePoint, stroke: string): string => {
  const { left, top, width, height } = boundsOf([from, to]);
  const isRising = (to.x - from.x) * (to.y - from.y) < 0;
  return shape(
    id,
    `${place(left, top, width, height, isRising)}<a:prstGeom prst="line"><a:avLst/></a:prstGeom>${stroke}`,
  );
};

const polygon = (id: number, spots: readonly PicturePoint[], fill: string): string => {
  const { left, top, width, height } = boundsOf(spots);
  const points = spots.map(({ x, y }) => `<a:pt x="${emu(x - left)}" y="${emu(y - top)}"/>`);
  const [first = "", ...rest] = points;
  const path = `<a:moveTo>${first}</a:moveTo>${rest.map((point) => `<a:lnTo>${point}</a:lnTo>`).join("")}<a:close/>`;
  return shape(
    id,
    `${place(left, top, width, height)}<a:custGeom><a:avLst/><a:gdLst/><a:ahLst/><a:cxnLst/><a:rect l="0" t="0" r="r" b="b"/><a:pathLst><a:path w="${emu(width)}" h="${emu(height)}">${path}</a:path></a:pathLst></a:custGeom><a:solidFill><a:srgbClr val="${fill}"/></a:solidFill>${lineText(WEIGHTS.thin)}`,
  );
};

const labelText = (id: number, { x, y }: PicturePoint, text: string, align: "middle" | "start"): string => {
  const width = text.length * PX_PER_LETTER + PX_PER_LETTER;
  const left = align === "middle" ? x - width / 2 : x;
  const run = `<a:r><a:rPr lang="en-US" sz="${WORD_SIZE}"><a:solidFill><a:srgbClr val="${INK}"/></a:solidFill><a:latin typeface="Calibri"/></a:rPr><a:t>${escapeXml(text)}</a:t></a:r>`;
  return shape(
    id,
    `${place(left, y - WORD_HEIGHT / 2, width, WORD_HEIGHT)}<a:prstGeom prst="rect"><a:avLst/></a:prstGeom><a:noFill/><a:ln><a:noFill/></a:ln>`,
    `<xdr:txBody><a:bodyPr wrap="none" lIns="0" tIns="0" rIns="0" bIns="0" anchor="ctr"/><a:p><a:pPr algn="${align === "middle" ? "ctr" : "l"}"/>${run}</a:p></xdr:txBody>`,
  );
};

const ARROWS = '<a:headEnd type="triangle"/><a:tailEnd type="triangle"/>';

const markTexts = (mark: Mark, nextId: () => number): string[] => {
  switch (mark.kind) {
    case "line": {
      const dash = mark.weight === "dashed" ? '<a:prstDash val="dash"/>' : "";
      const stroke = lineText(WEIGHTS[mark.weight], dash);
      return mark.points
        .slice(1)
        .map((to, index) => segment(nextId(), mark.points[index] as PicturePoint, to, stroke));
    }
    case "dimension":
      return [segment(nextId(), mark.from, mark.to, lineText(DIMENSION_WEIGHT, ARROWS))];
    case "face":
      return [polygon(nextId(), mark.points, FILLS[mark.fill])];
    case "label":
      return [labelText(nextId(), mark.at, mark.text, mark.align)];
  }
};

/** A figure as one group of vector shapes, which stay sharp on paper and can be edited. */
const figureText = ({ description, marks }: Figure, firstId: number, size: string): string => {
  let id = firstId;
  const shapes = marks.flatMap((mark) => markTexts(mark, () => ++id)).join("");
  const whole = `<a:off x="0" y="0"/><a:ext ${size}/><a:chOff x="0" y="0"/><a:chExt ${size}/>`;
  return `<xdr:grpSp><xdr:nvGrpSpPr><xdr:cNvPr${attributesText({ id: firstId, name: "Picture", descr: description })}/><xdr:cNvGrpSpPr/></xdr:nvGrpSpPr><xdr:grpSpPr><a:xfrm>${whole}</a:xfrm></xdr:grpSpPr>${shapes}</xdr:grpSp>`;
};

/** The position and size of something over the cells, in pixels. */
interface AnchoredBox {
  readonly at: CellAddress;
  readonly offsetPx?: { readonly x: number; readonly y: number };
  readonly width: number;
  readonly height: number;
}

/** The path of a sheet's drawing part; a sheet without one gets one. */
const drawingOf = (draft: PackageDraft, sheetPath: string): string => {
  const there = relationshipsOf(draft.result(), sheetPath).find(({ kind }) => kind === "drawing")?.target;
  if (there !== undefined && draft.has(there)) return there;
  const path = draft.freePath("xl/drawings/drawing", ".xml");
  draft.add(path, CONTENT_TYPE, `<xdr:wsDr xmlns:xdr="${DRAWING}" xmlns:a="${MAIN}"></xdr:wsDr>`);
  const id = draft.addRelationship(sheetPath, "drawing", path);
  draft.edit(sheetPath, ({ root }) => [
    insertInOrder(
      root,
      SHEET_ORDER,
      "drawing",
      `<${prefixOf(root)}drawing xmlns:r="${RELATIONSHIP_TYPES}"${attributesText({ "r:id": id })}/>`,
    ),
  ]);
  return path;
};

/** Adds an anchored object on top of a sheet's drawing. `make` gets the drawing part's path and a free shape id. */
export const addAnchored = (
  draft: PackageDraft,
  sheetPath: string,
  { at, offsetPx = { x: 0, y: 0 }, width, height }: AnchoredBox,
  make: (drawingPath: string, freeId: number, size: string) => string,
): void => {
  const path = drawingOf(draft, sheetPath);
  const numbers = [...draft.read(path).source.matchAll(/cNvPr\b[^>]*?\sid="(\d+)"/g)].map(([, id]) =>
    Number(id),
  );
  const size = `cx="${emu(width)}" cy="${emu(height)}"`;
  const body = make(path, numbers.reduce((most, id) => Math.max(most, id), 1) + 1, size);
  const from = `<xdr:from><xdr:col>${at.column}</xdr:col><xdr:colOff>${emu(offsetPx.x)}</xdr:colOff><xdr:row>${at.row}</xdr:row><xdr:rowOff>${emu(offsetPx.y)}</xdr:rowOff></xdr:from>`;
  draft.edit(path, ({ source, root }) => [
    changeElement(source, root, {
      // The prefixes are declared here, because the part may use others.
      append: `<xdr:oneCellAnchor xmlns:xdr="${DRAWING}" xmlns:a="${MAIN}">${from}<xdr:ext ${size}/>${body}<xdr:clientData/></xdr:oneCellAnchor>`,
    }),
  ]);
};

/** Adds a figure over a sheet's cells. */
export const addDrawing = (
  draft: PackageDraft,
  sheetPath: string,
  { at, figure }: { readonly at: CellAddress; readonly figure: Figure },
): void => {
  const { width, height } = figure;
  addAnchored(draft, sheetPath, { at, width, height }, (_, id, size) => figureText(figure, id, size));
};
