const MB = 1_000_000;

/** What a workbook file may ask of memory. Real bids stay far below; a file made to exhaust a machine is stopped here. */
export const LIMITS = {
  fileBytes: 60 * MB,
  parts: 5_000,
  partBytes: 120 * MB,
  allPartsBytes: 300 * MB,
  /** Elements in one XML part; a cell with a formula takes three. */
  elements: 1_500_000,
  depth: 200,
  cells: 400_000,
  /** What lies over the cells of all sheets and is shown; what goes beyond stays in the file and isn't shown. */
  drawingBytes: 20 * MB,
  pictures: 500,
  pictureBytes: 40 * MB,
  /** A small file can hold a huge picture of one color. */
  picturePixels: 50 * MB,
} as const;

export const inMegabytes = (bytes: number): string => `${Math.ceil(bytes / MB)} MB`;
