/** An element of a picture, with the text that stands directly in it. */
export interface MarkupElement {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  text: string;
}

const PIECE = /<\/(\w+)>|<(\w+)((?: [\w:-]+="[^"<]*")*)>|([^<]+)/gy;
const ENTITIES: Readonly<Record<string, string>> = { lt: "<", gt: ">", quot: '"', amp: "&" };

const unescaped = (text: string): string =>
  text.replace(/&(\w*);?/g, (_, entity: string) => {
    const sign = ENTITIES[entity];
    if (sign === undefined) throw new Error(`&${entity} is no entity here`);
    return sign;
  });

/** Reads markup element by element, in the order of their opening; throws where it isn't well formed. */
export const readMarkup = (markup: string): MarkupElement[] => {
  const elements: MarkupElement[] = [];
  const open: MarkupElement[] = [];
  let read = 0;
  for (const [piece, closing, opening, attributes = "", text] of markup.matchAll(PIECE)) {
    read += piece.length;
    if (closing !== undefined && open.pop()?.name !== closing) throw new Error(`${piece} closes nothing`);
    if (opening !== undefined) {
      const pairs = [...attributes.matchAll(/ ([\w:-]+)="([^"]*)"/g)];
      const element: MarkupElement = {
        name: opening,
        attributes: new Map(pairs.map(([, key = "", value = ""]) => [key, unescaped(value)])),
        text: "",
      };
      elements.push(element);
      open.push(element);
    }
    const parent = open.at(-1);
    if (text !== undefined && parent) parent.text += unescaped(text);
  }
  if (read !== markup.length || open.length > 0) throw new Error(`not well formed after ${read} characters`);
  return elements;
};
