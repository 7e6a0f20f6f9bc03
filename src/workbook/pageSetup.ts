import type { Print } from "./plan";

/** Page setups that a sheet plan can ask for. Every sheet is one page wide. */
export const PAGE_SETUP: Readonly<
  Record<
    Print,
    {
      readonly orientation: "landscape" | "portrait";
      /** undefined: as many pages as it takes. */
      readonly pagesHigh?: 1;
    }
  >
> = {
  "one page, landscape": { orientation: "landscape", pagesHigh: 1 },
  "one page, portrait": { orientation: "portrait", pagesHigh: 1 },
  "one page wide, landscape": { orientation: "landscape" },
  "one page wide, portrait": { orientation: "portrait" },
};

/** The area that fits on both Letter and A4 paper inside normal margins at 100 %. */
export const PAPER_PX = { width: 650, height: 890 } as const;
