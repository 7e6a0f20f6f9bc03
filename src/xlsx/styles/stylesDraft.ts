import {
  BaselineOffset,
  BooleanNumber,
  WrapStrategy,
  type IBorderStyleData,
  type IStyleData,
  type Nullable,
} from "@univerjs/core";
import { argbOf } from "./colors";
import { changeElement, insertInOrder, prefixOf, STYLES_ORDER } from "../xml/elementOrder";
import { builtInId, FIRST_CUSTOM_ID } from "./numberFormats";
import type { Splice } from "../xml/splices";
import { BORDER_STYLES, HORIZONTAL_ALIGNMENTS, enumName, VERTICAL_ALIGNMENTS } from "./styleEnums";
import { childOf, childrenOf, numberAttribute, type XmlElement, type XmlPart } from "../xml/xml";
import { attributesText } from "../xml/xmlText";

type List = "numFmts" | "fonts" | "fills" | "borders" | "cellXfs";

const isOn = (flag: unknown): boolean => flag === BooleanNumber.TRUE;

/** A file stores font, fill and border in lists of their own. Equal styles give equal text. */
const fontText = (style: IStyleData, x: string): string => {
  const color = argbOf(style.cl?.rgb ?? "");
  const offset =
    style.va === BaselineOffset.SUPERSCRIPT
      ? "superscript"
      : style.va === BaselineOffset.SUBSCRIPT
        ? "subscript"
        : "";
  return [
    `<${x}font>`,
    isOn(style.bl) ? `<${x}b/>` : "",
    isOn(style.it) ? `<${x}i/>` : "",
    isOn(style.st?.s) ? `<${x}strike/>` : "",
    isOn(style.ul?.s) ? `<${x}u/>` : "",
    offset === "" ? "" : `<${x}vertAlign val="${offset}"/>`,
    `<${x}sz val="${style.fs ?? 11}"/>`,
    color === undefined ? "" : `<${x}color rgb="${color}"/>`,
    `<${x}name${attributesText({ val: style.ff ?? "Calibri" })}/>`,
    `</${x}font>`,
  ].join("");
};

const fillText = (style: IStyleData, x: string): string => {
  const color = argbOf(style.bg?.rgb ?? "");
  if (color === undefined) return `<${x}fill><${x}patternFill patternType="none"/></${x}fill>`;
  return `<${x}fill><${x}patternFill patternType="solid"><${x}fgColor rgb="${color}"/><${x}bgColor indexed="64"/></${x}patternFill></${x}fill>`;
};

const sideText = (name: string, side: Nullable<IBorderStyleData>, x: string): string => {
  const style = side ? enumName(BORDER_STYLES, side.s) : undefined;
  if (!side || style === undefined) return `<${x}${name}/>`;
  const color = argbOf(side.cl.rgb ?? "") ?? "FF000000";
  return `<${x}${name} style="${style}"><${x}color rgb="${color}"/></${x}${name}>`;
};

const borderText = ({ bd }: IStyleData, x: string): string =>
  `<${x}border>${sideText("left", bd?.l, x)}${sideText("right", bd?.r, x)}${sideText("top", bd?.t, x)}${sideText("bottom", bd?.b, x)}<${x}diagonal/></${x}border>`;

const rotationOf = ({ tr }: IStyleData): string | undefined => {
  if (!tr || (tr.a === 0 && !isOn(tr.v))) return undefined;
  if (isOn(tr.v)) return "255";
  return String(tr.a > 0 ? tr.a + 90 : -tr.a);
};

const alignmentOf = (style: IStyleData): Readonly<Record<string, string | undefined>> => ({
  horizontal: style.ht ? enumName(HORIZONTAL_ALIGNMENTS, style.ht) : undefined,
  vertical: style.vt ? enumName(VERTICAL_ALIGNMENTS, style.vt) : undefined,
  wrapText: style.tb === WrapStrategy.WRAP ? "1" : undefined,
  textRotation: rotationOf(style),
});

/** The styles part of a file, to which missing cell formats are added. Existing ones stay as they are. */
export class StylesDraft {
  private readonly added = new Map<List, string[]>();
  private readonly known = new Map<string, number>();
  private readonly xfs: readonly XmlElement[];

  constructor(
    private readonly part: XmlPart,
    /** The file's cell formats, in the order of their indexes. */
    private readonly cellFormats: readonly IStyleData[],
  ) {
    this.xfs = childrenOf(childOf(part.root, "cellXfs"), "xf");
  }

  private get x(): string {
    return prefixOf(this.part.root);
  }

  private add(list: List, text: string): number {
    const key = `${list} ${text}`;
    const there = this.known.get(key);
    if (there !== undefined) return there;
    const added = this.added.get(list) ?? [];
    const index = (childOf(this.part.root, list)?.children.length ?? 0) + added.length;
    this.added.set(list, [...added, text]);
    this.known.set(key, index);
    return index;
  }

  private formatNumber(pattern: string): number {
    const builtIn = builtInId(pattern);
    if (builtIn !== undefined) return builtIn;
    const own = childrenOf(childOf(this.part.root, "numFmts"), "numFmt");
    const there = own.find(({ attributes }) => attributes.get("formatCode") === pattern);
    if (there) return numberAttribute(there, "numFmtId") ?? 0;
    const highest = Math.max(
      FIRST_CUSTOM_ID - 1,
      ...own.map((element) => numberAttribute(element, "numFmtId") ?? 0),
    );
    const key = `numFmt ${pattern}`;
    const number = this.known.get(key) ?? highest + 1 + (this.added.get("numFmts")?.length ?? 0);
    if (!this.known.has(key)) {
      this.known.set(key, number);
      this.add("numFmts", `<${this.x}numFmt${attributesText({ numFmtId: number, formatCode: pattern })}/>`);
    }
    return number;
  }

  /**
   * The index of a cell format. `base` is the format the cell had in the file: whatever of it is unchanged stays as the file
   * has it, with what we can't show, such as locking or a theme color.
   */
  indexOf(style: IStyleData | undefined, base: number | undefined, isQuoted: boolean): number {
    const from = base !== undefined && this.xfs[base] ? base : 0;
    const xf = this.xfs[from];
    const had = this.cellFormats[from] ?? {};
    // Missing font properties come from the workbook's default format.
    const usual = this.cellFormats[0] ?? {};
    const wantedStyle: IStyleData = style ? { ff: usual.ff, fs: usual.fs, cl: usual.cl, ...style } : had;
    const { x } = this;
    const attributes: Record<string, string | undefined> = Object.fromEntries(xf?.attributes ?? []);
    const keepOr = (
      name: string,
      text: (style: IStyleData, x: string) => string,
      list: List,
      apply: string,
    ): void => {
      if (text(wantedStyle, x) === text(had, x)) return;
      attributes[name] = String(this.add(list, text(wantedStyle, x)));
      attributes[apply] = "1";
    };
    keepOr("fontId", fontText, "fonts", "applyFont");
    keepOr("fillId", fillText, "fills", "applyFill");
    keepOr("borderId", borderText, "borders", "applyBorder");
    const pattern = wantedStyle.n?.pattern ?? "General";
    if (pattern !== (had.n?.pattern ?? "General")) {
      attributes["numFmtId"] = String(this.formatNumber(pattern));
      attributes["applyNumberFormat"] = "1";
    }
    attributes["quotePrefix"] = isQuoted ? "1" : undefined;
    const source = (name: string): string => {
      const child = childOf(xf, name);
      return child ? this.part.source.slice(child.start, child.end) : "";
    };
    const wanted = alignmentOf(wantedStyle);
    let alignment = source("alignment");
    if (JSON.stringify(wanted) !== JSON.stringify(alignmentOf(had))) {
      const kept = Object.fromEntries(childOf(xf, "alignment")?.attributes ?? []);
      alignment = `<${x}alignment${attributesText({ ...kept, ...wanted })}/>`;
      attributes["applyAlignment"] = "1";
    }
    const ids = { numFmtId: "0", fontId: "0", fillId: "0", borderId: "0", xfId: "0", ...attributes };
    const text = `<${x}xf${attributesText(ids)}>${alignment}${source("protection")}</${x}xf>`;
    const isAsBefore =
      xf &&
      attributesText({ ...Object.fromEntries(xf.attributes), quotePrefix: attributes["quotePrefix"] }) ===
        attributesText(attributes);
    if (
      isAsBefore &&
      (xf.attributes.get("quotePrefix") === "1") === isQuoted &&
      alignment === source("alignment")
    )
      return from;
    return this.add("cellXfs", text);
  }

  changes(): Splice[] {
    return [...this.added].map(([list, texts]) => {
      const { source, root } = this.part;
      const element = childOf(root, list);
      const all = texts.join("");
      if (!element)
        return insertInOrder(
          root,
          STYLES_ORDER,
          list,
          `<${this.x}${list} count="${texts.length}">${all}</${this.x}${list}>`,
        );
      return changeElement(source, element, {
        attributes: { count: String(element.children.length + texts.length) },
        append: all,
      });
    });
  }
}
