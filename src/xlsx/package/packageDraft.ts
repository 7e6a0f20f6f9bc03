import { changeElement, prefixOf, removeElement } from "../xml/elementOrder";
import {
  reachableParts,
  RELATIONSHIP_TYPES,
  relationshipsOf,
  relationshipsPathOf,
  targetText,
} from "./relationships";
import { applySplices, type Splice } from "../xml/splices";
import { parseXml, type XmlPart } from "../xml/xml";
import { attributesText } from "../xml/xmlText";
import type { Parts } from "./zip";

const CONTENT_TYPES = "[Content_Types].xml";
const XML_HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const NO_RELATIONSHIPS = `${XML_HEAD}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"></Relationships>`;

export const encodeXml = (text: string): Uint8Array =>
  new TextEncoder().encode(text.startsWith("<?xml") ? text : XML_HEAD + text);

/** A package while it is being changed. Parts without changes keep the opened file's bytes. */
export class PackageDraft {
  private readonly parts: Map<string, Uint8Array>;
  /** Parsing a large sheet takes a second, so a part is parsed once until it changes. */
  private readonly parsed = new WeakMap<Uint8Array, XmlPart>();

  constructor(parts: Parts) {
    this.parts = new Map(parts);
  }

  result(): Parts {
    return this.parts;
  }

  has(path: string): boolean {
    return this.parts.has(path);
  }

  read(path: string): XmlPart {
    const bytes = this.parts.get(path);
    if (!bytes) throw new Error(`The package has no part ${path}.`);
    const part = this.parsed.get(bytes) ?? parseXml(bytes, path);
    this.parsed.set(bytes, part);
    return part;
  }

  /** Changes a part by splices of its source. Returns whether there were any. */
  edit(path: string, changes: (part: XmlPart) => readonly Splice[]): boolean {
    const part = this.read(path);
    const splices = changes(part);
    if (splices.length === 0) return false;
    // Parts are written as UTF-8, whatever their encoding was.
    const source = applySplices(part.source, splices)
      .replace(/^\uFEFF/, "")
      .replace(/^(<\?xml[^>]*encoding=["'])[^"']*/, "$1UTF-8");
    this.parts.set(path, new TextEncoder().encode(source));
    return true;
  }

  /** The first unused path of `xl/worksheets/sheet1.xml`, `sheet2.xml` ... */
  freePath(before: string, after: string): string {
    const taken = new Set([...this.parts.keys()].map((path) => path.toLowerCase()));
    let number = 1;
    while (taken.has(`${before}${number}${after}`.toLowerCase())) number++;
    return `${before}${number}${after}`;
  }

  add(path: string, contentType: string, content: string | Uint8Array): void {
    this.parts.set(path, typeof content === "string" ? encodeXml(content) : content);
    this.edit(CONTENT_TYPES, ({ source, root }) => [
      changeElement(source, root, {
        append: `<${prefixOf(root)}Override${attributesText({ PartName: targetText(path), ContentType: contentType })}/>`,
      }),
    ]);
  }

  /** Adds a relationship from one part to another. Returns its id. */
  addRelationship(from: string, kind: string, to: string): string {
    const path = relationshipsPathOf(from);
    if (!this.parts.has(path)) this.parts.set(path, encodeXml(NO_RELATIONSHIPS));
    const taken = new Set(relationshipsOf(this.parts, from).map(({ id }) => id));
    let number = 1;
    while (taken.has(`rId${number}`)) number++;
    const id = `rId${number}`;
    this.edit(path, ({ source, root }) => [
      changeElement(source, root, {
        append: `<${prefixOf(root)}Relationship${attributesText({ Id: id, Type: `${RELATIONSHIP_TYPES}/${kind}`, Target: targetText(to) })}/>`,
      }),
    ]);
    return id;
  }

  /** Removes a part, the relationship to it, and the parts that only it led to. */
  remove(from: string, path: string): void {
    const before = reachableParts(this.parts);
    const ids = new Set(
      relationshipsOf(this.parts, from)
        .filter(({ target }) => target === path)
        .map(({ id }) => id),
    );
    this.edit(relationshipsPathOf(from), ({ root }) =>
      root.children.filter(({ attributes }) => ids.has(attributes.get("Id") ?? "")).map(removeElement),
    );
    const after = reachableParts(this.parts);
    const gone = [...before].filter((each) => !after.has(each));
    for (const each of gone) {
      this.parts.delete(each);
      this.parts.delete(relationshipsPathOf(each));
    }
    const names = new Set(gone.map((each) => targetText(each).toLowerCase()));
    this.edit(CONTENT_TYPES, ({ root }) =>
      root.children
        .filter(({ attributes }) => names.has(attributes.get("PartName")?.toLowerCase() ?? ""))
        .map(removeElement),
    );
  }
}
