/** An image that the browser has decoded; rejects if it can't. */
export const decodedImage = async (source: string): Promise<HTMLImageElement> => {
  const image = new Image();
  image.src = source;
  await image.decode();
  return image;
};

export const canBeDrawn = (source: string): Promise<boolean> =>
  decodedImage(source).then(
    () => true,
    () => false,
  );
