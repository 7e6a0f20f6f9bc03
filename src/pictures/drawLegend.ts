import type { Layout } from "../../functions/layout/engine/layoutResult";
import type { Frame } from "./frame";
import { hatchFill } from "./pictureStyle";
import { element, text } from "./svg";

interface Entry {
  readonly kind: "whole" | "cut" | "offcut" | "gap" | "warn";
  readonly label: string;
}

const SWATCH = { width: 22, height: 14 };

const swatch = ({ kind }: Entry, x: number, y: number, id: string): string => {
  if (kind === "warn") return element("path", { d: `M${x + 11} ${y - 1}l8.5 15h-17z`, class: "gw-warn" });
  const box = { x, y, ...SWATCH, class: `gw-${kind}` };
  return element("rect", kind === "whole" ? box : { ...box, fill: hatchFill(id, kind) });
};

/** Wide enough for a character of any fallback font. */
const CHARACTER_WIDTH = 7.2;
const GAP = { toLabel: 6, toNext: 26 };

const entriesOf = ({ whole, cut, fromOffcuts, openings }: Layout, warnings: number): Entry[] => [
  { kind: "whole", label: `whole: ${whole}` },
  { kind: "cut", label: `cut from new panels: ${cut - fromOffcuts}` },
  { kind: "offcut", label: `cut from off-cuts: ${fromOffcuts}` },
  ...(openings.length > 0 ? [{ kind: "gap", label: `openings: ${openings.length}` } as const] : []),
  ...(warnings > 0 ? [{ kind: "warn", label: `warnings: ${warnings}` } as const] : []),
];

/** What each hatch pattern means and how many pieces have it, on one line below the picture. */
export const drawLegend = (
  layout: Layout,
  warnings: number,
  id: string,
  { width, height }: Frame,
): string => {
  const y = height - 26;
  let x = 40;
  const entries = entriesOf(layout, warnings).map((entry) => {
    const drawn = swatch(entry, x, y, id) + text(x + SWATCH.width + GAP.toLabel, y + 12, entry.label);
    x += SWATCH.width + GAP.toLabel + entry.label.length * CHARACTER_WIDTH + GAP.toNext;
    return drawn;
  });
  const panels = text(width - 40, y + 12, `panels to open: ${layout.panels}`, { "text-anchor": "end" });
  return entries.join("") + panels;
};
