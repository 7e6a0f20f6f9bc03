import { tidyText } from "../amountText";
import { notTaken } from "./bounds";
import type { CellKind } from "./kind";

const TAKES = "TRUE or FALSE";

/** TRUE or FALSE, as a value, as text, or as the 1 and 0 that spreadsheets treat alike. */
export const flag: CellKind<boolean> = {
  shape: "cell",
  takes: TAKES,
  read: (cell, label) => {
    const value = typeof cell === "string" ? tidyText(cell) : cell;
    if (value === true || value === 1 || value === "true") return true;
    if (value === false || value === 0 || value === "false") return false;
    throw notTaken(label, TAKES, cell);
  },
};
