const GENERIC = /(?:^|[\s,])(?:sans-serif|serif|monospace|system-ui)\s*$/;

export const withFallback = (font: string): string => (GENERIC.test(font) ? font : `${font}, sans-serif`);

/**
 * The engine draws text in the font that a file names, and nothing else. Where that font isn't installed, as Calibri outside Windows,
 * the browser draws a serif. With the fix it draws its usual sans-serif. Lasts for the life of the page; a second call changes nothing.
 */
export const drawMissingFontsAsSansSerif = (): void => {
  // Without a screen there is no canvas.
  if (typeof CanvasRenderingContext2D === "undefined") return;
  const font = Object.getOwnPropertyDescriptor(CanvasRenderingContext2D.prototype, "font");
  const { set } = font ?? {};
  if (!font || !set) return;
  Object.defineProperty(CanvasRenderingContext2D.prototype, "font", {
    ...font,
    set(this: CanvasRenderingContext2D, value: string) {
      set.call(this, withFallback(value));
    },
  });
};
