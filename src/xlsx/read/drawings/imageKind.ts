/** The type of a picture, told from its bytes and not from its name, and its pixels once decoded. */
export interface ImageKind {
  readonly type: "image/png" | "image/jpeg" | "image/gif";
  readonly pixels: number;
}

const beginsWith = (bytes: Uint8Array, ...first: readonly number[]): boolean =>
  first.every((byte, at) => bytes[at] === byte);

const kind = (type: ImageKind["type"], width: number, height: number): ImageKind | undefined =>
  width > 0 && height > 0 ? { type, pixels: width * height } : undefined;

const PNG_HEAD_BYTES = 24;
const GIF_HEAD_BYTES = 13;

interface Size {
  readonly width: number;
  readonly height: number;
}

/** JPEG markers that give the size (SOF): C0 to CF except three with other meanings. */
const isFrame = (mark: number): boolean => mark >= 0xc0 && mark <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(mark);

/** Markers without a length. */
const isBare = (mark: number): boolean => mark === 0x01 || (mark >= 0xd0 && mark <= 0xd8);

/** A JPEG is a chain of segments, each with its length; one of them has the size. */
const jpegKind = (bytes: Uint8Array, view: DataView): ImageKind | undefined => {
  let at = 2;
  while (at + 9 <= bytes.length && bytes[at] === 0xff) {
    const mark = bytes[at + 1] ?? 0;
    if (mark === 0xff) at += 1;
    else if (isBare(mark)) at += 2;
    else if (isFrame(mark)) return kind("image/jpeg", view.getUint16(at + 7), view.getUint16(at + 5));
    else at += 2 + view.getUint16(at + 2);
  }
  return undefined;
};

/** A GIF's first frame may be larger than its logical screen. */
const gifKind = (bytes: Uint8Array, view: DataView): ImageKind | undefined => {
  if (bytes.length < GIF_HEAD_BYTES) return undefined;
  const flags = bytes[10] ?? 0;
  const colorBytes = (flags & 0x80) === 0 ? 0 : 3 * 2 ** ((flags & 0x07) + 1);
  let at = GIF_HEAD_BYTES + colorBytes;
  // Extension blocks: a marker, a label, and sub-blocks with their lengths up to an empty one.
  while (bytes[at] === 0x21) {
    at += 2;
    for (let length = bytes[at] ?? 0; length > 0; length = bytes[at] ?? 0) at += 1 + length;
    at += 1;
  }
  if (bytes[at] !== 0x2c || at + 9 > bytes.length) return undefined;
  const [screen, frame] = [6, at + 5].map((size) => ({
    width: view.getUint16(size, true),
    height: view.getUint16(size + 2, true),
  })) as [Size, Size];
  return kind("image/gif", Math.max(screen.width, frame.width), Math.max(screen.height, frame.height));
};

export const imageKind = (bytes: Uint8Array): ImageKind | undefined => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (beginsWith(bytes, 0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a) && bytes.length >= PNG_HEAD_BYTES)
    return kind("image/png", view.getUint32(16), view.getUint32(20));
  if (beginsWith(bytes, 0x47, 0x49, 0x46, 0x38)) return gifKind(bytes, view);
  return beginsWith(bytes, 0xff, 0xd8, 0xff) ? jpegKind(bytes, view) : undefined;
};
