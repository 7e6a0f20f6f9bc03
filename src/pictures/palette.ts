const LIGHT = {
  paper: "#ffffff",
  ink: "#1b2733",
  chalk: "#5b6b7a",
  whole: "#eef2f5",
  cut: "#f6d9a8",
  "cut-ink": "#8a5300",
  again: "#bfe3d0",
  "again-ink": "#0b6148",
  gap: "#d5dbe1",
  warn: "#b3261e",
  "warn-ink": "#ffffff",
  ridge: "#9c1c1c",
  hip: "#7a4a00",
  valley: "#005f73",
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
  again: "#164a3a",
  "again-ink": "#8fe3c2",
  gap: "#3b4650",
  warn: "#ff8a80",
  "warn-ink": "#14191f",
  ridge: "#ff9b8f",
  hip: "#f2bd6b",
  valley: "#6fd3e3",
  "pitch-break": "#c9aef5",
  "plane-0": "#4a4d52",
  "plane-1": "#404348",
  "plane-2": "#36393e",
  "plane-3": "#2d3034",
  "plane-4": "#25282b",
  "wall-light": "#323940",
  "wall-dark": "#22272d",
};

/** Where a picture's colors come from. */
export interface Palette {
  /** Rules that must stand before the colors are used. */
  readonly rules: string;
  color(name: ColorName): string;
}

const variables = (colors: Readonly<Record<ColorName, string>>): string =>
  Object.entries(colors)
    .map(([name, value]) => `--${name}:${value}`)
    .join(";");

/** Follows the reader's screen, light or dark; print is always light. */
export const SCREEN_PALETTE: Palette = {
  rules:
    `.gw-picture{${variables(LIGHT)}}` +
    `@media screen and (prefers-color-scheme:dark){.gw-picture{${variables(DARK)}}}`,
  color: (name) => `var(--${name})`,
};

/** Light always, each color written out: for a sheet's picture, whose reader may know no variables. */
export const PAPER_PALETTE: Palette = { rules: "", color: (name) => LIGHT[name] };
