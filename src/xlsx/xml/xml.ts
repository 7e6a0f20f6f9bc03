import { SaxesParser } from "saxes";
import { FileError } from "../book/fileError";
import { LIMITS } from "../book/limits";

/**
 * An element with its position in the source: `start` is at its `<`, `end` after its last `>`, and its content is between
 * `innerStart` and `innerEnd`. A part is changed by splicing its source at these positions, so that everything else in it stays
 * byte for byte.
 */
export interface XmlElement {
  /** Without its prefix. */
  readonly name: string;
  readonly prefix: string;
  /** By name, with the prefix where there is one: `r:id`. */
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly XmlElement[];
  /** The text directly in it. */
  readonly text: string;
  readonly start: number;
  readonly innerStart: number;
  readonly innerEnd: number;
  readonly end: number;
}

interface Growing extends XmlElement {
  children: XmlElement[];
  text: string;
  innerStart: number;
  innerEnd: number;
  end: number;
}

/** Decodes a part; UTF-8 and UTF-16 are all that the format allows. */
const decode = (bytes: Uint8Array, part: string): string => {
  const encoding =
    bytes[0] === 0xff && bytes[1] === 0xfe
      ? "utf-16le"
      : bytes[0] === 0xfe && bytes[1] === 0xff
        ? "utf-16be"
        : "utf-8";
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    throw new FileError(`The file's part ${part} can't be read as text.`);
  }
};

export interface XmlPart {
  readonly source: string;
  readonly root: XmlElement;
}

/** Parses a part strictly. Rejects a document type, which could declare entities. */
export const parseXml = (bytes: Uint8Array, part: string): XmlPart => {
  const source = decode(bytes, part);
  const parser = new SaxesParser({ xmlns: true, position: false });
  const open: Growing[] = [];
  let root: XmlElement | undefined;
  let elements = 0;
  let start = 0;

  parser.on("doctype", () => {
    throw new FileError(`The file's part ${part} declares a document type, which no workbook needs.`);
  });
  parser.on("error", () => {
    throw new FileError(`The file's part ${part} is not well-formed XML.`);
  });
  parser.on("opentagstart", () => {
    start = source.lastIndexOf("<", parser.position - 1);
  });
  parser.on("opentag", (tag) => {
    if (++elements > LIMITS.elements || open.length >= LIMITS.depth)
      throw new FileError(`The file's part ${part} has too many elements or nests them too deep.`);
    const element: Growing = {
      name: tag.local,
      prefix: tag.prefix,
      attributes: new Map(Object.values(tag.attributes).map(({ name, value }) => [name, value])),
      children: [],
      text: "",
      start,
      innerStart: parser.position,
      innerEnd: parser.position,
      end: parser.position,
    };
    open.at(-1)?.children.push(element);
    root ??= element;
    open.push(element);
  });
  const addText = (text: string): void => {
    const element = open.at(-1);
    if (element) element.text += text;
  };
  parser.on("text", addText);
  parser.on("cdata", addText);
  parser.on("closetag", (tag) => {
    const element = open.pop();
    if (!element) return;
    element.end = parser.position;
    // Searched from before the tag's last character: another closing tag may begin right after it.
    if (!tag.isSelfClosing) element.innerEnd = source.lastIndexOf("</", parser.position - 1);
  });
  parser.write(source).close();
  if (!root) throw new FileError(`The file's part ${part} is empty.`);
  return { source, root };
};

export const isSelfClosing = ({ innerStart, end }: XmlElement): boolean => innerStart === end;

export const childOf = (element: XmlElement | undefined, name: string): XmlElement | undefined =>
  element?.children.find((child) => child.name === name);

export const childrenOf = (element: XmlElement | undefined, name: string): readonly XmlElement[] =>
  element?.children.filter((child) => child.name === name) ?? [];

export const descendantsOf = (element: XmlElement, name: string): XmlElement[] =>
  element.children.flatMap((child) => [
    ...(child.name === name ? [child] : []),
    ...descendantsOf(child, name),
  ]);

export const numberAttribute = (element: XmlElement | undefined, name: string): number | undefined => {
  const text = element?.attributes.get(name);
  const number = text === undefined || text.trim() === "" ? NaN : Number(text);
  return Number.isFinite(number) ? number : undefined;
};

/** A boolean attribute as XML Schema writes it. */
export const flagAttribute = (element: XmlElement | undefined, name: string): boolean | undefined => {
  const text = element?.attributes.get(name);
  return text === undefined ? undefined : ["1", "true", "on"].includes(text);
};
