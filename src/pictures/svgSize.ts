/** The width and height of one of our own SVG pictures, in pixels. */
export const svgSize = (svg: string): { readonly width: number; readonly height: number } => {
  const [, width, height] = /^<svg[^>]* viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? [];
  return { width: Number(width), height: Number(height) };
};
