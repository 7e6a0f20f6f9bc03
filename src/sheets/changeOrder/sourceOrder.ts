import { InputError } from "../../../shared/inputError";
import type { Contents } from "../../workbook/contents";
import { jobOf, liveOrdersIn } from "../signedOrder/freezeOrder";
import type { SignedOrder } from "../signedOrder/readSignedOrder";
import { namesOfOrder } from "./changeOrderSequence";

/** Which order a side of a change order is of. */
export type OrderSource = Pick<SignedOrder, "sheet" | "from" | "job">;

/** The sheets on which an order may live: its own, one that a change order ties to it, or, once it was renamed, any of its job. */
const mayLiveOn = (workbook: Contents, { from, job }: OrderSource): string[] => {
  const own = [...namesOfOrder(workbook, from)].find((name) => workbook.sheets.has(name));
  return own === undefined ? liveOrdersIn(workbook).filter((name) => jobOf(workbook, name) === job) : [own];
};

/** The sheet on which an order lives; undefined where none is of its job. Refuses to guess among several. */
const theOne = (workbook: Contents, origin: OrderSource, remedy: string): string | undefined => {
  const candidates = mayLiveOn(workbook, origin);
  if (candidates.length <= 1) return candidates[0];
  const named = candidates.map((name) => `"${name}"`).join(" or ");
  throw new InputError(
    `"${origin.sheet}" is of the order on "${origin.from}", which is gone or renamed: it may be ${named}, of the same job. ${remedy} Nothing was written.`,
  );
};

const RENAME = "Give the right one its name again.";
const FREEZE = "Freeze the right one again.";

/** The sheet on which the order of a signed sheet lives, under its own name or another. */
export const liveSheetOf = (workbook: Contents, base: OrderSource): string | undefined =>
  theOne(workbook, base, RENAME);

/** Refuses two sides of different orders. */
export const refuseDifferentOrders = (workbook: Contents, base: OrderSource, now: OrderSource): void => {
  if (base.from === now.from) return;
  const then = theOne(workbook, base, RENAME);
  const after = theOne(workbook, now, FREEZE);
  // Where the order isn't in the workbook any more, its job alone tells.
  const isSame = then === after || then === undefined || after === undefined;
  if (isSame && base.job === now.job) return;
  throw new InputError(
    `"${base.sheet}" is of the order on "${base.from}", "${now.sheet}" of the one on "${now.from}": a change order compares an order with itself. Nothing was written.`,
  );
};
