/** Excel's theme as Office.js gives it. Older versions give colors only. */
export type HostTheme = Partial<Pick<Office.OfficeTheme, "isDarkTheme" | "bodyBackgroundColor">>;

const HALF = 127;

/** Perceived brightness, 0 to 255 (luma weights of ITU-R BT.601). */
const brightness = (hexColor: string): number => {
  const [red = 0, green = 0, blue = 0] = (/[0-9a-f]{6}/i.exec(hexColor)?.[0].match(/../g) ?? []).map((pair) =>
    parseInt(pair, 16),
  );
  return 0.299 * red + 0.587 * green + 0.114 * blue;
};

/**
 * The color scheme of the pane for a theme of Excel's; undefined (the system's scheme) where Excel doesn't say. The pane
 * keeps its own colors, and so its contrast.
 */
export const schemeOf = ({ isDarkTheme, bodyBackgroundColor }: HostTheme): "dark" | "light" | undefined => {
  if (isDarkTheme !== undefined) return isDarkTheme ? "dark" : "light";
  if (!bodyBackgroundColor) return undefined;
  return brightness(bodyBackgroundColor) < HALF ? "dark" : "light";
};
