/** Excel's own theme, as far as Office.js tells; older ones give colors only. */
export type HostTheme = Partial<Pick<Office.OfficeTheme, "isDarkTheme" | "bodyBackgroundColor">>;

const HALF = 127;

/** As bright as the eye takes it (the weights of ITU-R BT.601), out of 255. */
const brightness = (hexColor: string): number => {
  const [red = 0, green = 0, blue = 0] = (/[0-9a-f]{6}/i.exec(hexColor)?.[0].match(/../g) ?? []).map((pair) =>
    parseInt(pair, 16),
  );
  return 0.299 * red + 0.587 * green + 0.114 * blue;
};

/**
 * The color scheme of the pane beside an Excel of that theme; undefined, as the system's own, where Excel doesn't say.
 * Its exact colors aren't taken over: the pane's keep their contrast.
 */
export const schemeOf = ({ isDarkTheme, bodyBackgroundColor }: HostTheme): "dark" | "light" | undefined => {
  if (isDarkTheme !== undefined) return isDarkTheme ? "dark" : "light";
  if (!bodyBackgroundColor) return undefined;
  return brightness(bodyBackgroundColor) < HALF ? "dark" : "light";
};
