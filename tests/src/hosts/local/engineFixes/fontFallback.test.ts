import {
  drawMissingFontsAsSansSerif,
  withFallback,
} from "../../../../../src/hosts/local/engineFixes/fontFallback";

/** A canvas's context, as far as fonts go. */
class Context {
  private drawn = "10px sans-serif";

  get font(): string {
    return this.drawn;
  }

  set font(value: string) {
    this.drawn = value;
  }
}

afterEach(() => {
  Reflect.deleteProperty(globalThis, "CanvasRenderingContext2D");
});

describe("the font in which the grid draws", () => {
  it.each([
    ["italic 700 14.67px Calibri", "italic 700 14.67px Calibri, sans-serif"],
    ["12px Courier, monospace", "12px Courier, monospace"],
    ["12px sans-serif", "12px sans-serif"],
    ["12px Sans-serif Pro", "12px Sans-serif Pro, sans-serif"],
  ])("%s becomes %s", (font, drawn) => {
    expect(withFallback(font)).toBe(drawn);
  });

  it("has a fallback, however often the fix is applied; it has none without the fix", () => {
    Object.assign(globalThis, { CanvasRenderingContext2D: Context });
    const context = new Context();
    context.font = "12px Calibri";
    expect(context.font).toBe("12px Calibri");
    drawMissingFontsAsSansSerif();
    drawMissingFontsAsSansSerif();
    context.font = "12px Calibri";
    expect(context.font).toBe("12px Calibri, sans-serif");
  });

  it("is left alone where there is no canvas", () => {
    expect(drawMissingFontsAsSansSerif).not.toThrow();
  });
});
