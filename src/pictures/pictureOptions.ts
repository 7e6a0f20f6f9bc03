import type { Palette } from "./palette";

export interface PictureOptions {
  /** What the picture shows, such as the plane's name on the sheet. */
  readonly title: string;
  /** Begins the ids inside; differs between pictures that share a page. */
  readonly id: string;
  /** SCREEN_PALETTE where the reader's light or dark is followed, PAPER_PALETTE for a sheet. */
  readonly palette: Palette;
}
