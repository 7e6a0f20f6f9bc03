import type { ColorName, Palette } from "./palette";
import { element } from "./svg";

/** How the picture looks. It brings its own paper, so that it reads the same on a page, in a sheet and as a file. */
export const pictureStyle = ({ rules, color }: Palette): string =>
  element(
    "style",
    {},
    rules +
      '.gw-layout{font:13px system-ui,"Segoe UI",sans-serif}' +
      `.gw-layout text{fill:${color("ink")};font-variant-numeric:tabular-nums}` +
      `.gw-paper{fill:${color("paper")}}` +
      `.gw-whole{fill:${color("whole")};stroke:${color("chalk")};stroke-width:.6}` +
      `.gw-joint{fill:none;stroke:${color("chalk")};stroke-width:.8}` +
      `.gw-cut{stroke:${color("cut-ink")};stroke-width:1}` +
      `.gw-again{stroke:${color("again-ink")};stroke-width:1}` +
      `.gw-line{stroke:${color("chalk")};stroke-width:.8;stroke-dasharray:5 3}` +
      `.gw-gap{stroke:${color("ink")};stroke-width:1.6}` +
      `.gw-outline{fill:none;stroke:${color("ink")};stroke-width:2.2;stroke-linejoin:round}` +
      `.gw-dimension{stroke:${color("ink")};stroke-width:1;fill:none}` +
      `.gw-arrow{fill:${color("ink")}}` +
      `.gw-warn{fill:${color("warn")};stroke:${color("paper")};stroke-width:1;stroke-linejoin:round}` +
      `.gw-layout .gw-warn-sign{fill:${color("warn-ink")};font-weight:700;font-size:9px}` +
      `.gw-layout .gw-size{font-size:10px;stroke:${color("paper")};stroke-width:2.5;paint-order:stroke;stroke-linejoin:round}` +
      ".gw-layout .gw-title{font-size:16px;font-weight:600}" +
      ".gw-layout .gw-small{font-size:11px}",
  );

/** Kinds of piece differ in their hatching too, for a print in black and white and for eyes that don't tell colors. */
export type Hatch = "cut" | "again" | "gap";

export const hatchFill = (id: string, hatch: Hatch): string => `url(#${id}-${hatch})`;

interface Tile {
  readonly hatch: Hatch;
  readonly size: number;
  readonly strokes: string;
  readonly ink: ColorName;
}

/** Cut: strokes one way. From an off-cut: dots. An opening: strokes both ways. */
const TILES: readonly Tile[] = [
  { hatch: "cut", size: 8, strokes: "M-2 2L2 -2M0 8L8 0M6 10L10 6", ink: "cut-ink" },
  { hatch: "again", size: 7, strokes: "M3 2.5h1.6M3 3.3h1.6M3 4.1h1.6", ink: "again-ink" },
  { hatch: "gap", size: 10, strokes: "M0 0L10 10M10 0L0 10", ink: "chalk" },
];

export const hatches = (id: string, { color }: Palette): string =>
  element(
    "defs",
    {},
    ...TILES.map(({ hatch, size, strokes, ink }) =>
      element(
        "pattern",
        { id: `${id}-${hatch}`, width: size, height: size, patternUnits: "userSpaceOnUse" },
        element("rect", { width: size, height: size, style: `fill:${color(hatch)}` }),
        element("path", { d: strokes, style: `stroke:${color(ink)};stroke-width:.9;fill:none` }),
      ),
    ),
  );
