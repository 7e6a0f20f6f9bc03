import { readAmount, tidyText } from "../amountText";
import { InputError } from "../inputError";
import { notTaken } from "./bounds";
import type { CellKind } from "./kind";

/** Inches from the left lock between which a panel can't be bent. */
interface BendBand {
  readonly fromIn: number;
  readonly toIn: number;
}

const TAKES = "none, or bands in inches from the left lock such as 5-6, 11-12";

/** Parts of a panel's stamping that a brake can't cross. */
export const bendBands: CellKind<readonly BendBand[]> = {
  shape: "cell",
  takes: TAKES,
  read: (cell, label) => {
    if (typeof cell !== "string") throw notTaken(label, TAKES, cell);
    if (tidyText(cell) === "none") return [];
    return cell.split(",").map((part) => {
      const [, from = "", to = ""] = /^([\d./ ]+)-([\d./ ]+)$/.exec(tidyText(part)) ?? [];
      const [fromIn, toIn] = [readAmount(from.trim()), readAmount(to.trim())];
      if (fromIn === undefined || toIn === undefined) throw notTaken(label, TAKES, cell);
      if (!(fromIn < toIn)) throw new InputError(`${label} must run from less to more, got "${part.trim()}"`);
      return { fromIn, toIn };
    });
  },
};
