/** Cell styles, the same for every host. Text has a contrast of at least 4.5 : 1 on its fill. */
export interface Style {
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly sizePt?: number;
  readonly color?: string;
  readonly fill?: string;
  readonly align?: "center";
  readonly wrap?: boolean;
  readonly border?: "all";
}

const INK = "#1d2b32";
const SLATE = "#2f4858";

export const STYLES = {
  title: { bold: true, sizePt: 18, color: SLATE },
  note: { italic: true, color: "#4a5a63" },
  section: { bold: true, sizePt: 13, color: SLATE },
  heading: { bold: true, color: "#ffffff", fill: SLATE, wrap: true, align: "center" },
  label: { color: INK },
  /** Centered, to keep it apart from its neighbors. */
  centered: { color: INK, align: "center" },
  input: { color: "#1f3d7a", fill: "#fff6d6", border: "all" },
  /** Sentences that a user types. */
  words: { color: "#1f3d7a", fill: "#fff6d6", border: "all", wrap: true },
  result: { color: INK, border: "all" },
  total: { bold: true, color: INK, fill: "#e3ebee", border: "all" },
  caution: { color: "#7a1f14" },
} as const satisfies Record<string, Style>;

/** Row heights in pixels, for styles whose text needs more than the default. */
export const ROW_HEIGHTS: Partial<Record<keyof typeof STYLES, number>> = {
  title: 34,
  section: 26,
  heading: 58,
};

export type StyleName = keyof typeof STYLES;

/** Color of the thin borders around cells. */
export const RULE_COLOR = "#a9b8bf";
