interface Size {
  readonly width: number;
  readonly height: number;
}

/** The largest size that keeps the picture's proportions and fits in the box. */
export const scaleToFit = (
  box: Size,
  picture: Size,
): { readonly widthPx: number; readonly heightPx: number } => {
  const scale = Math.min(box.width / picture.width, box.height / picture.height);
  return { widthPx: picture.width * scale, heightPx: picture.height * scale };
};
