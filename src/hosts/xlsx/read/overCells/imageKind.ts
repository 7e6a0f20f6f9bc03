/** What the bytes of a picture are, whatever their name says, and how many dots a browser would have to keep for it. */
export interface ImageKind {
  readonly type: "image/png" | "image/jpeg" | "image/gif";
  readonly pixels: number;
}

const beginsWith = (bytes: Uint8Array, ...first: readonly number[]): boolean =>
  first.every((byte, at) => bytes[at] === byte);

const kind = (type: ImageKind["type"], width: number, height: number): ImageKind | undefined =>
  width > 0 && height > 0 ? { type, pixels: width * height } : undefined;

const PNG_HEAD_BYTES = 24;
const GIF_HEAD_BYTES = 10;

/** Marks of a JPEG that give its size: C0 to CF but for three that mean something else. */
const isFrame = (mark: number): boolean => mark >= 0xc0 && mark <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(mark);

/** A JPEG is a chain of segments, each with its length; its size stands in one of them. */
const jpegKind = (bytes: Uint8Array, view: DataView): ImageKind | undefined => {
  let at = 2;
  while (at + 9 <= bytes.length && bytes[at] === 0xff) {
    const mark = bytes[at + 1] ?? 0;
    if (mark === 0xff) at += 1;
    else if (isFrame(mark)) return kind("image/jpeg", view.getUint16(at + 7), view.getUint16(at + 5));
    else at += 2 + view.getUint16(at + 2);
  }
  return undefined;
};

export const imageKind = (bytes: Uint8Array): ImageKind | undefined => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (beginsWith(bytes, 0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a) && bytes.length >= PNG_HEAD_BYTES)
    return kind("image/png", view.getUint32(16), view.getUint32(20));
  if (beginsWith(bytes, 0x47, 0x49, 0x46, 0x38) && bytes.length >= GIF_HEAD_BYTES)
    return kind("image/gif", view.getUint16(6, true), view.getUint16(8, true));
  return beginsWith(bytes, 0xff, 0xd8, 0xff) ? jpegKind(bytes, view) : undefined;
};
