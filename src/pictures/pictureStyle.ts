import { element } from "./svg";

/**
 * The picture's colours, in light, dark and print. It brings its own paper, so that it reads the same on a page, in a
 * sheet and as a file of its own.
 */
const LIGHT =
  "--paper:#ffffff;--ink:#1b2733;--chalk:#5b6b7a;--whole:#eef2f5;--cut:#f6d9a8;--cut-ink:#8a5300;--again:#bfe3d0;--again-ink:#0b6148;--gap:#d5dbe1;--warn:#b3261e;--warn-ink:#ffffff";
const DARK =
  "--paper:#14191f;--ink:#e8edf2;--chalk:#9fb0c0;--whole:#26303a;--cut:#5a4218;--cut-ink:#ffcf87;--again:#164a3a;--again-ink:#8fe3c2;--gap:#3b4650;--warn:#ff8a80;--warn-ink:#14191f";

export const pictureStyle = (): string =>
  element(
    "style",
    {},
    `.gw-layout{${LIGHT};font:13px system-ui,"Segoe UI",sans-serif}` +
      `@media screen and (prefers-color-scheme:dark){.gw-layout{${DARK}}}` +
      ".gw-layout text{fill:var(--ink);font-variant-numeric:tabular-nums}" +
      ".gw-paper{fill:var(--paper)}" +
      ".gw-whole{fill:var(--whole);stroke:var(--chalk);stroke-width:.6}" +
      ".gw-joint{fill:none;stroke:var(--chalk);stroke-width:.8}" +
      ".gw-cut{stroke:var(--cut-ink);stroke-width:1}" +
      ".gw-again{stroke:var(--again-ink);stroke-width:1}" +
      ".gw-line{stroke:var(--chalk);stroke-width:.8;stroke-dasharray:5 3}" +
      ".gw-gap{stroke:var(--ink);stroke-width:1.6}" +
      ".gw-outline{fill:none;stroke:var(--ink);stroke-width:2.2;stroke-linejoin:round}" +
      ".gw-dimension{stroke:var(--ink);stroke-width:1;fill:none}" +
      ".gw-arrow{fill:var(--ink)}" +
      ".gw-warn{fill:var(--warn);stroke:var(--paper);stroke-width:1;stroke-linejoin:round}" +
      ".gw-layout .gw-warn-sign{fill:var(--warn-ink);font-weight:700;font-size:9px}" +
      ".gw-layout .gw-size{font-size:10px;stroke:var(--paper);stroke-width:2.5;paint-order:stroke;stroke-linejoin:round}" +
      ".gw-layout .gw-title{font-size:16px;font-weight:600}" +
      ".gw-layout .gw-small{font-size:11px}",
  );

/** Kinds of piece differ in their hatching too, for a print in black and white and for eyes that don't tell colours. */
export type Hatch = "cut" | "again" | "gap";

const tile = (id: string, size: number, fill: string, strokes: string, ink: string): string =>
  element(
    "pattern",
    { id, width: size, height: size, patternUnits: "userSpaceOnUse" },
    element("rect", { width: size, height: size, style: `fill:var(--${fill})` }),
    element("path", { d: strokes, style: `stroke:var(--${ink});stroke-width:.9;fill:none` }),
  );

export const hatchFill = (id: string, hatch: Hatch): string => `url(#${id}-${hatch})`;

/** Cut: strokes one way. From an off-cut: dots. An opening: strokes both ways. */
export const hatches = (id: string): string =>
  element(
    "defs",
    {},
    tile(`${id}-cut`, 8, "cut", "M-2 2L2 -2M0 8L8 0M6 10L10 6", "cut-ink"),
    tile(`${id}-again`, 7, "again", "M3 2.5h1.6M3 3.3h1.6M3 4.1h1.6", "again-ink"),
    tile(`${id}-gap`, 10, "gap", "M0 0L10 10M10 0L0 10", "chalk"),
  );
