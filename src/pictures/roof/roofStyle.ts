import type { EdgeKind } from "../../../functions/roof/roofParts";
import type { ColorName, Palette } from "../palette";

/** Width and dashes tell the kinds apart without color: in a black-and-white print, or for a color-blind reader. */
const STROKES: Readonly<Record<EdgeKind, { readonly color: ColorName; readonly stroke: string }>> = {
  eave: { color: "ink", stroke: "stroke-width:3" },
  rake: { color: "ink", stroke: "stroke-width:1.5" },
  ridge: { color: "ridge", stroke: "stroke-width:5" },
  hip: { color: "hip", stroke: "stroke-width:2.5;stroke-dasharray:10 5" },
  valley: { color: "valley", stroke: "stroke-width:2.5;stroke-dasharray:12 4 2 4" },
  "pitch break": { color: "pitch-break", stroke: "stroke-width:2.5;stroke-dasharray:2 4" },
  "eave step": { color: "ink", stroke: "stroke-width:1.5;stroke-dasharray:4 2" },
};

/** Plane shades, from full light to full shadow. */
const SHADES = ["plane-0", "plane-1", "plane-2", "plane-3", "plane-4"] as const;

export const edgeClass = (kind: EdgeKind): string => `roof-${kind.replace(" ", "-")}`;

/** The class of a plane by its shadow, from 0 (facing the light) to 1 (facing away). */
export const planeClass = (shadow: number): string =>
  `roof-${SHADES[Math.min(SHADES.length - 1, Math.max(0, Math.round(shadow * (SHADES.length - 1))))]}`;

/** The style of both roof pictures. Each draws its own background, so it reads the same on a page, in a sheet and as a file. */
export const roofStyle = ({ rules, color }: Palette): string =>
  rules +
  '.gw-roof{font:13px system-ui,"Segoe UI",sans-serif}' +
  `.gw-roof text{fill:${color("ink")};stroke:${color("paper")};paint-order:stroke;stroke-width:4px;` +
  "stroke-linejoin:round;text-anchor:middle;dominant-baseline:central}" +
  `.gw-roof .roof-inner{stroke:${color("plane-0")}}` +
  `.gw-roof .roof-quiet{fill:${color("chalk")}}` +
  ".gw-roof .roof-legend{text-anchor:start}" +
  ".gw-roof .roof-number{font-weight:700;stroke:none}" +
  ".gw-roof .gw-title{font-size:16px;font-weight:600}" +
  `.gw-paper{fill:${color("paper")}}` +
  `.roof-wall-line{fill:none;stroke:${color("chalk")};stroke-width:1;stroke-dasharray:4 3}` +
  `.roof-arrow{fill:none;stroke:${color("ink")};stroke-width:1.5}` +
  `.roof-arrow-head{fill:${color("ink")}}` +
  `.roof-badge{fill:${color("paper")};stroke:${color("ink")};stroke-width:1.5}` +
  "[class^=roof-plane],.roof-wall{stroke-width:.7;stroke-linejoin:round}" +
  `.roof-wall{fill:${color("wall-light")};stroke:${color("wall-light")}}` +
  `.roof-shadow{fill:${color("wall-dark")};stroke:${color("wall-dark")}}` +
  SHADES.map((shade) => `.roof-${shade}{fill:${color(shade)};stroke:${color(shade)}}`).join("") +
  ".roof-edge,.roof-view-edge{fill:none}" +
  Object.entries(STROKES)
    .map(
      ([kind, { color: name, stroke }]) => `.${edgeClass(kind as EdgeKind)}{${stroke};stroke:${color(name)}}`,
    )
    .join("") +
  // Hidden parts would break up the dashes, so the view draws every kind as a solid line.
  ".gw-roof .roof-view-edge{stroke-width:1.5;stroke-dasharray:none;stroke-linecap:round}";
