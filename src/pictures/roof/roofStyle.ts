import type { EdgeKind } from "../../../functions/roof/roofParts";
import type { ColourName, Palette } from "../palette";

/** Width and dashes tell the kinds apart where colour can't: on a black-and-white print, to a colour-blind eye. */
const STROKES: Readonly<Record<EdgeKind, { readonly colour: ColourName; readonly stroke: string }>> = {
  eave: { colour: "ink", stroke: "stroke-width:3" },
  rake: { colour: "ink", stroke: "stroke-width:1.5" },
  ridge: { colour: "ridge", stroke: "stroke-width:5" },
  hip: { colour: "hip", stroke: "stroke-width:2.5;stroke-dasharray:10 5" },
  valley: { colour: "valley", stroke: "stroke-width:2.5;stroke-dasharray:12 4 2 4" },
  "pitch break": { colour: "pitch-break", stroke: "stroke-width:2.5;stroke-dasharray:2 4" },
  "eave step": { colour: "ink", stroke: "stroke-width:1.5;stroke-dasharray:4 2" },
};

/** Planes from the one in most light to the one in least. */
const SHADES = ["plane-0", "plane-1", "plane-2", "plane-3", "plane-4"] as const;

export const edgeClass = (kind: EdgeKind): string => `roof-${kind.replace(" ", "-")}`;

/** The class of a plane by its shadow: 0 in full light, 1 turned away from it. */
export const planeClass = (shadow: number): string =>
  `roof-${SHADES[Math.min(SHADES.length - 1, Math.max(0, Math.round(shadow * (SHADES.length - 1))))]}`;

/** How both roof pictures look. Each brings its own paper, so that it reads the same on a page, in a sheet and as a file. */
export const roofStyle = ({ rules, colour }: Palette): string =>
  rules +
  '.gw-roof{font:13px system-ui,"Segoe UI",sans-serif}' +
  `.gw-roof text{fill:${colour("ink")};stroke:${colour("paper")};paint-order:stroke;stroke-width:4px;` +
  "stroke-linejoin:round;text-anchor:middle;dominant-baseline:central}" +
  `.gw-roof .roof-inner{stroke:${colour("plane-0")}}` +
  `.gw-roof .roof-quiet{fill:${colour("chalk")}}` +
  ".gw-roof .roof-legend{text-anchor:start}" +
  ".gw-roof .roof-number{font-weight:700;stroke:none}" +
  ".gw-roof .gw-title{font-size:16px;font-weight:600}" +
  `.gw-paper{fill:${colour("paper")}}` +
  `.roof-wall-line{fill:none;stroke:${colour("chalk")};stroke-width:1;stroke-dasharray:4 3}` +
  `.roof-arrow{fill:none;stroke:${colour("ink")};stroke-width:1.5}` +
  `.roof-arrow-head{fill:${colour("ink")}}` +
  `.roof-badge{fill:${colour("paper")};stroke:${colour("ink")};stroke-width:1.5}` +
  "[class^=roof-plane],.roof-wall{stroke-width:.7;stroke-linejoin:round}" +
  `.roof-wall{fill:${colour("wall-light")};stroke:${colour("wall-light")}}` +
  `.roof-shadow{fill:${colour("wall-dark")};stroke:${colour("wall-dark")}}` +
  SHADES.map((shade) => `.roof-${shade}{fill:${colour(shade)};stroke:${colour(shade)}}`).join("") +
  ".roof-edge,.roof-view-edge{fill:none}" +
  Object.entries(STROKES)
    .map(
      ([kind, { colour: name, stroke }]) =>
        `.${edgeClass(kind as EdgeKind)}{${stroke};stroke:${colour(name)}}`,
    )
    .join("") +
  // A dash that hidden parts cut up would say nothing: in the view every kind is a plain line.
  ".gw-roof .roof-view-edge{stroke-width:1.5;stroke-dasharray:none;stroke-linecap:round}";
