import { BorderStyleTypes, HorizontalAlign, VerticalAlign } from "@univerjs/core";

/** What file and engine call the same thing. */
export const BORDER_STYLES: readonly (readonly [string, BorderStyleTypes])[] = [
  ["thin", BorderStyleTypes.THIN],
  ["hair", BorderStyleTypes.HAIR],
  ["dotted", BorderStyleTypes.DOTTED],
  ["dashed", BorderStyleTypes.DASHED],
  ["dashDot", BorderStyleTypes.DASH_DOT],
  ["dashDotDot", BorderStyleTypes.DASH_DOT_DOT],
  ["double", BorderStyleTypes.DOUBLE],
  ["medium", BorderStyleTypes.MEDIUM],
  ["mediumDashed", BorderStyleTypes.MEDIUM_DASHED],
  ["mediumDashDot", BorderStyleTypes.MEDIUM_DASH_DOT],
  ["mediumDashDotDot", BorderStyleTypes.MEDIUM_DASH_DOT_DOT],
  ["slantDashDot", BorderStyleTypes.SLANT_DASH_DOT],
  ["thick", BorderStyleTypes.THICK],
];

export const HORIZONTAL_ALIGNMENTS: readonly (readonly [string, HorizontalAlign])[] = [
  ["left", HorizontalAlign.LEFT],
  ["center", HorizontalAlign.CENTER],
  ["right", HorizontalAlign.RIGHT],
  ["justify", HorizontalAlign.JUSTIFIED],
  ["distributed", HorizontalAlign.DISTRIBUTED],
];

export const VERTICAL_ALIGNMENTS: readonly (readonly [string, VerticalAlign])[] = [
  ["top", VerticalAlign.TOP],
  ["center", VerticalAlign.MIDDLE],
  ["bottom", VerticalAlign.BOTTOM],
];

export const enumValue = <T>(
  words: readonly (readonly [string, T])[],
  word: string | undefined,
): T | undefined => words.find(([each]) => each === word)?.[1];

export const enumName = <T>(words: readonly (readonly [string, T])[], thing: T): string | undefined =>
  words.find(([, each]) => each === thing)?.[0];
