import type { EdgeKind } from "../../functions/roof/roofParts";

interface Palette {
  readonly paper: string;
  readonly ink: string;
  readonly quiet: string;
  /** Planes from the one in most light to the one in least. */
  readonly shades: readonly [string, string, string, string, string];
  /** A wall in the light, and one in shadow. */
  readonly walls: readonly [string, string];
  readonly edges: Readonly<Record<EdgeKind, string>>;
}

const LIGHT: Palette = {
  paper: "#ffffff",
  ink: "#1b1b1b",
  quiet: "#5a5a5a",
  shades: ["#f4f1ea", "#e6e1d6", "#d5cebf", "#c1b8a5", "#aaa08b"],
  walls: ["#eef0f2", "#d9dee2"],
  edges: {
    eave: "#1b1b1b",
    rake: "#1b1b1b",
    ridge: "#9c1c1c",
    hip: "#7a4a00",
    valley: "#005f73",
    "pitch break": "#5b3a8e",
  },
};

const DARK: Palette = {
  paper: "#15181c",
  ink: "#f1f1f1",
  quiet: "#b5b9be",
  shades: ["#4a4d52", "#404348", "#36393e", "#2d3034", "#25282b"],
  walls: ["#323940", "#22272d"],
  edges: {
    eave: "#f1f1f1",
    rake: "#f1f1f1",
    ridge: "#ff9b8f",
    hip: "#f2bd6b",
    valley: "#6fd3e3",
    "pitch break": "#c9aef5",
  },
};

/** Width and dashes tell the kinds apart where colour can't: on a black-and-white print, to a colour-blind eye. */
const STROKES: Readonly<Record<EdgeKind, string>> = {
  eave: "stroke-width:3",
  rake: "stroke-width:1.5",
  ridge: "stroke-width:5",
  hip: "stroke-width:2.5;stroke-dasharray:10 5",
  valley: "stroke-width:2.5;stroke-dasharray:12 4 2 4",
  "pitch break": "stroke-width:2.5;stroke-dasharray:2 4",
};

const EDGE_KINDS_STYLED = Object.keys(STROKES) as EdgeKind[];

export const edgeClass = (kind: EdgeKind): string => `roof-${kind.replace(" ", "-")}`;
export const shadeClass = (shade: number): string => `roof-shade-${shade}`;
export const SHADES = LIGHT.shades.length;

const colours = ({ paper, ink, quiet, shades, walls, edges }: Palette): string =>
  [
    `.roof-paper{fill:${paper}}`,
    `.roof-picture text{fill:${ink};stroke:${paper}}`,
    `.roof-picture .roof-inner{stroke:${shades[0]}}`,
    `.roof-picture .roof-quiet{fill:${quiet}}`,
    `.roof-wall-line{stroke:${quiet}}`,
    `.roof-arrow{stroke:${ink}}`,
    `.roof-arrow-head{fill:${ink}}`,
    `.roof-badge{fill:${paper};stroke:${ink}}`,
    `.roof-wall{fill:${walls[0]};stroke:${walls[0]}}`,
    `.roof-shadow{fill:${walls[1]};stroke:${walls[1]}}`,
    ...shades.map((colour, shade) => `.${shadeClass(shade)}{fill:${colour};stroke:${colour}}`),
    ...EDGE_KINDS_STYLED.map((kind) => `.${edgeClass(kind)}{stroke:${edges[kind]}}`),
  ].join("");

/** One style for both pictures: light, dark where the reader's screen is, and always light on paper. */
export const PICTURE_STYLE = [
  ".roof-picture{font-family:system-ui,sans-serif;font-size:13px}",
  ".roof-picture text{paint-order:stroke;stroke-width:4px;stroke-linejoin:round;text-anchor:middle;dominant-baseline:central}",
  ".roof-picture .roof-legend{text-anchor:start}",
  ".roof-edge,.roof-view-edge{fill:none}",
  ".roof-picture .roof-number{font-weight:700;stroke:none}",
  ".roof-wall-line{fill:none;stroke-width:1;stroke-dasharray:4 3}",
  ".roof-arrow{fill:none;stroke-width:1.5}",
  ".roof-badge{stroke-width:1.5}",
  "[class^=roof-shade],.roof-wall{stroke-width:.7;stroke-linejoin:round}",
  ...EDGE_KINDS_STYLED.map((kind) => `.${edgeClass(kind)}{${STROKES[kind]}}`),
  // A dash that hidden parts cut up would say nothing: in the view every kind is a plain line.
  ".roof-picture .roof-view-edge{stroke-width:1.5;stroke-dasharray:none;stroke-linecap:round}",
  colours(LIGHT),
  `@media screen and (prefers-color-scheme:dark){${colours(DARK)}}`,
].join("");
