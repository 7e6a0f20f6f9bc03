import type { ColorName, Palette } from "./palette";
import { element } from "./svg";

/** The style of a layout picture. It draws its own background, so it reads the same on a page, in a sheet and as a file. */
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
      `.gw-offcut{stroke:${color("offcut-ink")};stroke-width:1}` +
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

/** Each kind of piece has a hatch pattern too, for black-and-white prints and for color-blind readers. */
export type Hatch = "cut" | "offcut" | "gap";

export const hatchFill = (id: string, hatch: Hatch): string => `url(#${id}-${hatch})`;

interface Tile {
  readonly hatch: Hatch;
  readonly size: number;
  readonly strokes: string;
  readonly ink: ColorName;
}

/** Cut from a new panel: diagonal lines. Cut from an off-cut: dots. Opening: crossed lines. */
const TILES: readonly Tile[] = [
  { hatch: "cut", size: 8, strokes: "M-2 2L2 -2M0 8L8 0M6 10L10 6", ink: "cut-ink" },
  { hatch: "offcut", size: 7, strokes: "M3 2.5h1.6M3 3.3h1.6M3 4.1h1.6", ink: "offcut-ink" },
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
