/** Some browsers allow no more arguments in one call. */
const AT_A_TIME = 8192;

/** A file as a data: URL. */
export const dataUrl = (type: string, bytes: Uint8Array): string => {
  const pieces: string[] = [];
  for (let at = 0; at < bytes.length; at += AT_A_TIME)
    pieces.push(String.fromCharCode(...bytes.subarray(at, at + AT_A_TIME)));
  return `data:${type};base64,${btoa(pieces.join(""))}`;
};

export const svgUrl = (svg: string): string => dataUrl("image/svg+xml", new TextEncoder().encode(svg));
