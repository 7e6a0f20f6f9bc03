import type { Layout } from "../../functions/layout/engine/listing";
import type { Frame } from "./frame";
import { hatchFill } from "./pictureStyle";
import { element, text } from "./svg";

interface Entry {
  readonly kind: "whole" | "cut" | "again" | "gap" | "warn";
  readonly words: string;
}

const SWATCH = { width: 22, height: 14 };

const swatch = ({ kind }: Entry, x: number, y: number, id: string): string => {
  if (kind === "warn") return element("path", { d: `M${x + 11} ${y - 1}l8.5 15h-17z`, class: "gw-warn" });
  const box = { x, y, ...SWATCH, class: `gw-${kind}` };
  return element("rect", kind === "whole" ? box : { ...box, fill: hatchFill(id, kind) });
};

/** Wide enough for a character in any of the fonts that may be there. */
const CHARACTER_WIDTH = 7.2;
const GAP = { toWords: 6, toNext: 26 };

const entriesOf = ({ whole, cut, fromOffcuts, openings }: Layout, warnings: number): Entry[] => [
  { kind: "whole", words: `whole ${whole}` },
  { kind: "cut", words: `cut from new panels ${cut - fromOffcuts}` },
  { kind: "again", words: `cut from off-cuts ${fromOffcuts}` },
  ...(openings.length > 0 ? [{ kind: "gap", words: `openings ${openings.length}` } as const] : []),
  ...(warnings > 0 ? [{ kind: "warn", words: `warnings ${warnings}` } as const] : []),
];

/** What each hatching means and how many there are, on one line below the picture. */
export const drawKey = (layout: Layout, warnings: number, id: string, { width, height }: Frame): string => {
  const y = height - 26;
  let x = 40;
  const entries = entriesOf(layout, warnings).map((entry) => {
    const drawn = swatch(entry, x, y, id) + text(x + SWATCH.width + GAP.toWords, y + 12, entry.words);
    x += SWATCH.width + GAP.toWords + entry.words.length * CHARACTER_WIDTH + GAP.toNext;
    return drawn;
  });
  const panels = text(width - 40, y + 12, `panels to open: ${layout.panels}`, { "text-anchor": "end" });
  return entries.join("") + panels;
};
