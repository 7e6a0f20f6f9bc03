import { webDarkTheme, webLightTheme, type Theme } from "@fluentui/react-theme";

const PLAIN_COLOR = /^#[0-9a-f]+$/i;

/**
 * The library's light and dark looks at once: each color follows the page's `color-scheme`, which the host or the system
 * sets, and nothing has to be drawn again. Shadows and veils, which aren't plain colors, are the light look's.
 */
const bothLooks = Object.fromEntries(
  Object.entries(webLightTheme).map(([token, light]) => {
    const dark = webDarkTheme[token as keyof Theme];
    const isOneOfTwo = light !== dark && PLAIN_COLOR.test(`${light}`) && PLAIN_COLOR.test(`${dark}`);
    return [token, isOneOfTwo ? `light-dark(${light}, ${dark})` : light];
  }),
) as unknown as Theme;

const [ACCENT, ACCENT_HELD, ON_ACCENT] = ["var(--accent)", "var(--accent-held)", "var(--on-accent)"];
const [INK, QUIET] = ["var(--ink)", "var(--quiet)"];

/** Our own colors, those of pane.css, in the places that show. */
export const THEME: Theme = {
  ...bothLooks,
  fontFamilyBase: "inherit",
  colorNeutralBackground1: "var(--card)",
  colorNeutralForeground1: INK,
  colorNeutralForeground1Hover: INK,
  colorNeutralForeground1Pressed: INK,
  colorNeutralForeground2: INK,
  colorNeutralForeground3: QUIET,
  colorNeutralForeground4: QUIET,
  colorNeutralStroke1: "var(--edge)",
  colorNeutralStrokeAccessible: QUIET,
  colorBrandBackground: ACCENT,
  colorBrandBackgroundHover: ACCENT_HELD,
  colorBrandBackgroundPressed: ACCENT_HELD,
  colorNeutralForegroundOnBrand: ON_ACCENT,
  colorNeutralForegroundInverted: ON_ACCENT,
  colorCompoundBrandBackground: ACCENT,
  colorCompoundBrandBackgroundHover: ACCENT_HELD,
  colorCompoundBrandBackgroundPressed: ACCENT_HELD,
  colorCompoundBrandStroke: ACCENT,
  colorCompoundBrandStrokeHover: ACCENT_HELD,
  colorCompoundBrandStrokePressed: ACCENT_HELD,
  colorStrokeFocus2: "var(--focus)",
};
