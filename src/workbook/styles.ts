/** How a cell looks, said once for every host. Contrast is at least 4.5 : 1 for text on its fill. */
export interface Style {
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly sizePt?: number;
  readonly colour?: string;
  readonly fill?: string;
  readonly align?: "center";
  readonly wrap?: boolean;
  readonly border?: "all";
}

const INK = "#1d2b32";
const SLATE = "#2f4858";

export const STYLES = {
  title: { bold: true, sizePt: 18, colour: SLATE },
  note: { italic: true, colour: "#4a5a63" },
  section: { bold: true, sizePt: 13, colour: SLATE },
  heading: { bold: true, colour: "#ffffff", fill: SLATE, wrap: true, align: "center" },
  label: { colour: INK },
  /** In the middle, so that it stands off its neighbours. */
  centred: { colour: INK, align: "center" },
  input: { colour: "#1f3d7a", fill: "#fff6d6", border: "all" },
  /** Typed in sentences. */
  words: { colour: "#1f3d7a", fill: "#fff6d6", border: "all", wrap: true },
  result: { colour: INK, border: "all" },
  total: { bold: true, colour: INK, fill: "#e3ebee", border: "all" },
  caution: { colour: "#7a1f14" },
} as const satisfies Record<string, Style>;

/** Pixels that a row needs for its style's letters, where the usual height is too low. */
export const ROW_HEIGHTS: Partial<Record<keyof typeof STYLES, number>> = {
  title: 34,
  section: 26,
  heading: 58,
};

export type StyleName = keyof typeof STYLES;

/** Thin lines around cells. */
export const RULE_COLOUR = "#a9b8bf";
