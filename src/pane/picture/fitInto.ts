interface Size {
  readonly width: number;
  readonly height: number;
}

/** The largest size of a picture's own shape that fits into a box. */
export const fitInto = (
  box: Size,
  picture: Size,
): { readonly widthPx: number; readonly heightPx: number } => {
  const scale = Math.min(box.width / picture.width, box.height / picture.height);
  return { widthPx: picture.width * scale, heightPx: picture.height * scale };
};
