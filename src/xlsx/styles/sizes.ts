/** A file stores row heights in points, and column widths in digits of the default font, which are 7 px wide. */
const DIGIT_PX = 7;
const PADDING_PX = 5;
const PX_PER_POINT = 4 / 3;

export const rowPx = (points: number): number => Math.round(points * PX_PER_POINT);
export const rowPoints = (px: number): number => Math.round((px / PX_PER_POINT) * 100) / 100;

/** The height of a row with one line of a font size, about as spreadsheets auto-fit it. */
export const rowPxOfFont = (points: number): number => Math.ceil(points * 1.75);

export const columnPx = (width: number): number => Math.trunc(width * DIGIT_PX + 0.5);
export const columnWidth = (px: number): number => Math.round((px / DIGIT_PX) * 10_000) / 10_000;

/** The default column width from `baseColWidth`: digits without the padding. */
export const columnPxOfDigits = (digits: number): number =>
  Math.ceil((digits * DIGIT_PX + PADDING_PX) / 8) * 8;

/** English Metric Units, the unit of drawings. */
const EMU_PER_PX = 9525;

export const emuOfPx = (px: number): number => Math.round(px * EMU_PER_PX);
export const pxOfEmu = (emu: number): number => emu / EMU_PER_PX;
