import { webDarkTheme, webLightTheme, type Theme } from "@fluentui/react-theme";

const PLAIN_COLOR = /^#[0-9a-f]+$/i;

/**
 * The library's light and dark themes in one: each color follows the page's `color-scheme`, which the host or the system
 * sets, so nothing is redrawn. Shadows and overlays, which aren't plain colors, come from the light theme.
 */
const lightAndDark = Object.fromEntries(
  Object.entries(webLightTheme).map(([token, light]) => {
    const dark = webDarkTheme[token as keyof Theme];
    const isPlainPair = light !== dark && PLAIN_COLOR.test(`${light}`) && PLAIN_COLOR.test(`${dark}`);
    return [token, isPlainPair ? `light-dark(${light}, ${dark})` : light];
  }),
) as unknown as Theme;

const [ACCENT, ACCENT_PRESSED, ON_ACCENT] = ["var(--accent)", "var(--accent-held)", "var(--on-accent)"];
const [INK, QUIET] = ["var(--ink)", "var(--quiet)"];

/** The library's theme with the colors of pane.css. */
export const THEME: Theme = {
  ...lightAndDark,
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
  colorBrandBackgroundHover: ACCENT_PRESSED,
  colorBrandBackgroundPressed: ACCENT_PRESSED,
  colorNeutralForegroundOnBrand: ON_ACCENT,
  colorNeutralForegroundInverted: ON_ACCENT,
  colorCompoundBrandBackground: ACCENT,
  colorCompoundBrandBackgroundHover: ACCENT_PRESSED,
  colorCompoundBrandBackgroundPressed: ACCENT_PRESSED,
  colorCompoundBrandStroke: ACCENT,
  colorCompoundBrandStrokeHover: ACCENT_PRESSED,
  colorCompoundBrandStrokePressed: ACCENT_PRESSED,
  colorStrokeFocus2: "var(--focus)",
};
