const MB = 1_000_000;

/** Limits on what a file may take of memory. Real bids stay far below them; they stop a file made to exhaust a machine. */
export const LIMITS = {
  fileBytes: 60 * MB,
  parts: 5_000,
  partBytes: 120 * MB,
  allPartsBytes: 300 * MB,
  /** Elements in one XML part; a cell with a formula takes three. */
  elements: 1_500_000,
  depth: 200,
  cells: 400_000,
  /** Drawings of all sheets that are shown. What exceeds these limits stays in the file and isn't shown. */
  drawingBytes: 20 * MB,
  pictures: 500,
  pictureBytes: 40 * MB,
  /** A small file can hold a huge picture in one color. */
  picturePixels: 50 * MB,
} as const;

export const inMegabytes = (bytes: number): string => `${Math.ceil(bytes / MB)} MB`;
