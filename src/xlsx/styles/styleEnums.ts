import { BorderStyleTypes, HorizontalAlign, VerticalAlign } from "@univerjs/core";

/** The format's enumeration names and the engine's values. */
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
  pairs: readonly (readonly [string, T])[],
  name: string | undefined,
): T | undefined => pairs.find(([each]) => each === name)?.[1];

export const enumName = <T>(pairs: readonly (readonly [string, T])[], value: T): string | undefined =>
  pairs.find(([, each]) => each === value)?.[0];
