import type { Print } from "./plan";

/** What goes to paper how, in the words that the hosts share; every sheet is one page wide. */
export const PAGE_SETUP: Readonly<
  Record<
    Print,
    {
      readonly orientation: "landscape" | "portrait";
      /** undefined: as many as it takes. */
      readonly pagesHigh?: 1;
    }
  >
> = {
  "one page, landscape": { orientation: "landscape", pagesHigh: 1 },
  "one page, portrait": { orientation: "portrait", pagesHigh: 1 },
  "one page wide, landscape": { orientation: "landscape" },
  "one page wide, portrait": { orientation: "portrait" },
};

/** What fits on Letter and on A4 alike, within the usual margins, printed in its own size. */
export const PAPER_PX = { width: 650, height: 890 } as const;
