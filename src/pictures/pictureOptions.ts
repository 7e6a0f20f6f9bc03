import type { Palette } from "./palette";

export interface PictureOptions {
  /** The caption above the picture, such as the plane's name on the sheet. */
  readonly title: string;
  /** The prefix of the ids inside; unique on a page. */
  readonly id: string;
  /** SCREEN_PALETTE follows the reader's light or dark mode; PAPER_PALETTE is for a sheet. */
  readonly palette: Palette;
}
