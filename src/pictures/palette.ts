/**
 * The edges of a roof are colored by what water does there. It parts at a ridge or hip: warm colors. It gathers in a
 * valley: green. It runs across a pitch break: violet. It leaves the roof at an eave, rake or eave step: the ink of the
 * text. Color is never the only sign: each kind of edge has a stroke of its own (roofStyle.ts), and each kind of piece a
 * hatch pattern (pictureStyle.ts). Lines have at least 3:1 contrast with what they are drawn on, text 4.5:1 (WCAG 2.2).
 */
const LIGHT = {
  paper: "#ffffff",
  ink: "#1b2733",
  chalk: "#5b6b7a",
  whole: "#eef2f5",
  cut: "#f6d9a8",
  "cut-ink": "#8a5300",
  offcut: "#bfe3d0",
  "offcut-ink": "#0b6148",
  gap: "#d5dbe1",
  warn: "#b3261e",
  "warn-ink": "#ffffff",
  ridge: "#8f3300",
  hip: "#6b4700",
  valley: "#00563f",
  "pitch-break": "#5b3a8e",
  "plane-0": "#f4f1ea",
  "plane-1": "#e6e1d6",
  "plane-2": "#d5cebf",
  "plane-3": "#c1b8a5",
  "plane-4": "#aaa08b",
  "wall-light": "#eef0f2",
  "wall-dark": "#d9dee2",
} as const;

export type ColorName = keyof typeof LIGHT;

const DARK: Readonly<Record<ColorName, string>> = {
  paper: "#14191f",
  ink: "#e8edf2",
  chalk: "#9fb0c0",
  whole: "#26303a",
  cut: "#5a4218",
  "cut-ink": "#ffcf87",
  offcut: "#164a3a",
  "offcut-ink": "#8fe3c2",
  gap: "#3b4650",
  warn: "#ff8a80",
  "warn-ink": "#14191f",
  ridge: "#ffa77a",
  hip: "#f2cd6b",
  valley: "#5fd6a8",
  "pitch-break": "#c9aef5",
  "plane-0": "#4a4d52",
  "plane-1": "#404348",
  "plane-2": "#36393e",
  "plane-3": "#2d3034",
  "plane-4": "#25282b",
  "wall-light": "#323940",
  "wall-dark": "#22272d",
};

/** The colors of a picture. */
export interface Palette {
  /** CSS rules that come before any use of the colors. */
  readonly rules: string;
  color(name: ColorName): string;
}

const variables = (colors: Readonly<Record<ColorName, string>>): string =>
  Object.entries(colors)
    .map(([name, value]) => `--${name}:${value}`)
    .join(";");

/** Follows the reader's light or dark mode; print is always light. */
export const SCREEN_PALETTE: Palette = {
  rules:
    `.gw-picture{${variables(LIGHT)}}` +
    `@media screen and (prefers-color-scheme:dark){.gw-picture{${variables(DARK)}}}`,
  color: (name) => `var(--${name})`,
};

/** Always light, with each color written out: programs that show a sheet's picture may not support CSS variables. */
export const PAPER_PALETTE: Palette = { rules: "", color: (name) => LIGHT[name] };
