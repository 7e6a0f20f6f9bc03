import { EDGE_KINDS } from "../../functions/roof/roofParts";
import { PAPER_PALETTE, SCREEN_PALETTE } from "../../src/pictures/palette";
import { roofStyle } from "../../src/pictures/roof/roofStyle";

const screenColors = [...SCREEN_PALETTE.rules.matchAll(/\.gw-picture\{([^}]*)\}/g)].map(
  ([, rules = ""]) =>
    new Map([...rules.matchAll(/--([\w-]+):(#[0-9a-f]{6})/g)].map(([, name, hex]) => [name, hex])),
);
const [light, dark] = screenColors;

/** Relative luminance of sRGB, as WCAG 2.2 defines it. */
const luminance = (hex: string): number => {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const channel = parseInt(hex.slice(at, at + 2), 16) / 255;
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
};

const contrast = (one: string, other: string): number => {
  const [darker = 0, lighter = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (lighter + 0.05) / (darker + 0.05);
};

const PLANES = ["plane-0", "plane-1", "plane-2", "plane-3", "plane-4"];
const WALLS = ["wall-light", "wall-dark"];
const PIECES = ["whole", "cut", "offcut", "gap"];

/** What is drawn on what. The chalk line of a wall is only drawn on the plan, where every plane has the lightest shade. */
const LINES: readonly (readonly [line: string, grounds: readonly string[]])[] = [
  ...["ink", "ridge", "hip", "valley", "pitch-break"].map(
    (edge) => [edge, ["paper", ...PLANES, ...WALLS]] as const,
  ),
  ["chalk", ["paper", "plane-0", "whole", "gap"]],
  ["cut-ink", ["cut"]],
  ["offcut-ink", ["offcut"]],
  ["warn", ["paper", ...PIECES]],
];
const TEXTS: readonly (readonly [text: string, grounds: readonly string[]])[] = [
  ["ink", ["paper", "plane-0", ...PIECES]],
  ["chalk", ["paper"]],
  ["warn-ink", ["warn"]],
];

it("contrast is 21:1 between black and white, and 1:1 between equals", () => {
  expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 6);
  expect(contrast("#777777", "#777777")).toBe(1);
});

describe.each([
  ["light", light],
  ["dark", dark],
])("in %s mode", (_, colors) => {
  const hexOf = (name: string): string => {
    const hex = colors?.get(name);
    if (!hex) throw new Error(`the palette has no ${name}`);
    return hex;
  };
  const pairs = (list: typeof LINES) =>
    list.flatMap(([drawn, grounds]) => grounds.map((ground) => [drawn, ground] as const));

  it.each(pairs(LINES))("a line in %s has 3:1 contrast on %s", (line, ground) => {
    expect(contrast(hexOf(line), hexOf(ground))).toBeGreaterThanOrEqual(3);
  });

  it.each(pairs(TEXTS))("text in %s has 4.5:1 contrast on %s", (text, ground) => {
    expect(contrast(hexOf(text), hexOf(ground))).toBeGreaterThanOrEqual(4.5);
  });
});

it("is light on paper", () => {
  for (const name of ["paper", "ink", "ridge", "valley"] as const)
    expect(PAPER_PALETTE.color(name)).toBe(light?.get(name));
});

it("colors the edges of a roof by what water does there", () => {
  const style = roofStyle(PAPER_PALETTE);
  const rgbOf = (kind: string): number[] => {
    const [, hex = ""] =
      new RegExp(`\\.roof-${kind.replace(" ", "-")}\\{[^}]*stroke:(#[0-9a-f]{6})`).exec(style) ?? [];
    return [1, 3, 5].map((at) => parseInt(hex.slice(at, at + 2), 16));
  };
  for (const kind of ["ridge", "hip"]) {
    const [red = 0, green = 0, blue = 0] = rgbOf(kind);
    expect(red).toBeGreaterThan(green);
    expect(green).toBeGreaterThan(blue);
  }
  const [red = 0, green = 0, blue = 0] = rgbOf("valley");
  expect(green).toBeGreaterThan(Math.max(red, blue));
  const ink = rgbOf("eave");
  for (const kind of ["rake", "eave step"]) expect(rgbOf(kind)).toEqual(ink);
  expect(new Set(EDGE_KINDS.map((kind) => rgbOf(kind).join())).size).toBe(5);
});
