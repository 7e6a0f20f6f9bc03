import { element, escapeXml } from "../../../pictures/svg";
import { pxOfEmu } from "../../styles/sizes";
import { childOf, childrenOf, flagAttribute, numberAttribute, type XmlElement } from "../../xml/xml";
import type { Frame } from "./frame";
import { requireSupported, orUnsupported } from "./unsupported";
import { paintOf } from "./paint";

const FONT = "Calibri,Carlito,'Segoe UI',system-ui,sans-serif";
const PX_PER_POINT = 4 / 3;
const LINE_HEIGHTS = 1.2;
/** The format's default space between a shape's edge and its text. */
const DEFAULT_INSETS_EMU = { lIns: 91_440, rIns: 91_440, tIns: 45_720, bIns: 45_720 } as const;

/** The `text-anchor` in SVG, and the fraction of the text box's width it is at. */
const ALIGNMENTS: ReadonlyMap<string, readonly [anchor: string, share: number]> = new Map([
  ["l", ["start", 0]],
  ["ctr", ["middle", 0.5]],
  ["r", ["end", 1]],
]);
const HEIGHTS: ReadonlyMap<string, number> = new Map([
  ["t", 0],
  ["ctr", 0.5],
  ["b", 1],
]);

const INDENTS = ["marL", "marR", "indent", "lvl"];
/** Attributes that change a run's letters, with values such as `none` or `noStrike` where they don't. */
const LETTER_CHANGES = ["u", "strike", "cap"];

interface Line {
  readonly markup: string;
  readonly sizePx: number;
  readonly anchor: string;
  readonly share: number;
}

const runOf = (run: XmlElement): { readonly markup: string; readonly sizePx: number } => {
  const properties = childOf(run, "rPr");
  const sizePx = (orUnsupported(numberAttribute(properties, "sz")) / 100) * PX_PER_POINT;
  requireSupported(sizePx > 0 && (numberAttribute(properties, "baseline") ?? 0) === 0);
  requireSupported(LETTER_CHANGES.every((name) => /^no/.test(properties?.attributes.get(name) ?? "none")));
  const attributes = {
    "font-size": sizePx,
    fill: orUnsupported(paintOf(properties)),
    ...(flagAttribute(properties, "b") && { "font-weight": "bold" }),
    ...(flagAttribute(properties, "i") && { "font-style": "italic" }),
  };
  return { markup: element("tspan", attributes, escapeXml(childOf(run, "t")?.text ?? "")), sizePx };
};

const lineOf = (paragraph: XmlElement): Line => {
  requireSupported(paragraph.children.every(({ name }) => ["pPr", "r", "endParaRPr"].includes(name)));
  const runs = childrenOf(paragraph, "r").map(runOf);
  const properties = childOf(paragraph, "pPr");
  requireSupported((properties?.children ?? []).every(({ name }) => !/^bu(?!None)/.test(name)));
  requireSupported(INDENTS.every((name) => (numberAttribute(properties, name) ?? 0) === 0));
  const [anchor, share] = orUnsupported(ALIGNMENTS.get(properties?.attributes.get("algn") ?? "l"));
  return {
    markup: runs.map(({ markup }) => markup).join(""),
    sizePx: runs.reduce((most, { sizePx }) => Math.max(most, sizePx), 0),
    anchor,
    share,
  };
};

/** The frame of a shape's text: the shape's frame without the insets. */
const textBox = ({ left, top, width, height }: Frame, body: XmlElement | undefined): Frame => {
  const room = (name: keyof typeof DEFAULT_INSETS_EMU): number =>
    pxOfEmu(numberAttribute(body, name) ?? DEFAULT_INSETS_EMU[name]);
  return {
    left: left + room("lIns"),
    top: top + room("tIns"),
    width: width - room("lIns") - room("rIns"),
    height: height - room("tIns") - room("bIns"),
  };
};

/** The text of a shape. Wrapped text isn't supported: where it wraps depends on the font. */
export const shapeText = (shape: XmlElement, frame: Frame): string[] => {
  const text = childOf(shape, "txBody");
  const lines = childrenOf(text, "p").map(lineOf);
  if (lines.every(({ markup }) => markup === "")) return [];
  const body = childOf(text, "bodyPr");
  requireSupported(body?.attributes.get("wrap") === "none");
  requireSupported(
    (numberAttribute(body, "rot") ?? 0) === 0 && (body?.attributes.get("vert") ?? "horz") === "horz",
  );
  requireSupported(!childOf(body, "normAutofit")?.attributes.has("fontScale"));
  const room = textBox(frame, body);
  const heightPx = lines.reduce((sum, { sizePx }) => sum + sizePx * LINE_HEIGHTS, 0);
  const down = orUnsupported(HEIGHTS.get(body?.attributes.get("anchor") ?? "t"));
  let y = room.top + (room.height - heightPx) * down;
  return lines.map(({ markup, sizePx, anchor, share }) => {
    const middle = y + (sizePx * LINE_HEIGHTS) / 2;
    y += sizePx * LINE_HEIGHTS;
    const place = { x: room.left + room.width * share, y: middle };
    return element(
      "text",
      { ...place, "text-anchor": anchor, "dominant-baseline": "central", "font-family": FONT },
      markup,
    );
  });
};
