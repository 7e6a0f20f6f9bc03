/** The width and height that one of our own pictures gives itself, in pixels. */
export const sizeOfSvg = (svg: string): { readonly width: number; readonly height: number } => {
  const [, width, height] = /^<svg[^>]* viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? [];
  return { width: Number(width), height: Number(height) };
};
