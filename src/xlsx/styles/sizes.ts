/** A file gives row heights in points, and column widths in digits of the usual font, which are 7 px wide. */
const DIGIT_PX = 7;
const PADDING_PX = 5;
const PX_PER_POINT = 4 / 3;

export const rowPx = (points: number): number => Math.round(points * PX_PER_POINT);
export const rowPoints = (px: number): number => Math.round((px / PX_PER_POINT) * 100) / 100;

/** What a row takes for a line of so many points, about as spreadsheets give it that find it by themselves. */
export const rowPxOfFont = (points: number): number => Math.ceil(points * 1.75);

export const columnPx = (width: number): number => Math.trunc(width * DIGIT_PX + 0.5);
export const columnWidth = (px: number): number => Math.round((px / DIGIT_PX) * 10_000) / 10_000;

/** The width of a sheet's columns that is given as so many digits, without the padding. */
export const columnPxOfDigits = (digits: number): number =>
  Math.ceil((digits * DIGIT_PX + PADDING_PX) / 8) * 8;

/** Drawings are measured in units of their own. */
const EMU_PER_PX = 9525;

export const emuOfPx = (px: number): number => Math.round(px * EMU_PER_PX);
export const pxOfEmu = (emu: number): number => emu / EMU_PER_PX;
