import { InputError } from "../../../shared/inputError";
import type { Contents } from "../contents";
import { takenFrom, type Signed } from "../signedBase/readSigned";
import { agreedChangeOrdersIn, type Earlier } from "./earlier";

/** Which order a side of a change order is of. */
export type Origin = Pick<Signed, "sheet" | "from" | "job">;

/** Refuses two sides of different orders. One whose sheet was renamed is known by its job. */
export const refuseOtherOrder = ({ sheets }: Contents, base: Origin, now: Origin): void => {
  const mayBeRenamed = !(sheets.has(base.from) && sheets.has(now.from)) && base.job === now.job;
  if (base.from === now.from || mayBeRenamed) return;
  throw new InputError(
    `"${base.sheet}" is of the order on "${base.from}", "${now.sheet}" of the one on "${now.from}": a change order compares an order with itself. Nothing was written.`,
  );
};

/**
 * The change orders of one order, without drafts. Where its sheet was renamed, a change order from the old name to the new one
 * ties them. One that has lost both its sheets may be of any order: it counts, and its error shows.
 */
export const changeOrdersOf = (workbook: Contents, from: string): Earlier[] => {
  const agreed = agreedChangeOrdersIn(workbook);
  const namesOn = ({ base, now }: Earlier): string[] =>
    [base, now].flatMap((sheet) => (sheet === undefined ? [] : (takenFrom(workbook, sheet) ?? [])));
  const names = new Set([from]);
  const ofOrder = (): Earlier[] =>
    agreed.filter((each) => {
      const on = namesOn(each);
      return on.length === 0 || on.some((name) => names.has(name));
    });
  let known: number;
  do {
    known = names.size;
    for (const name of ofOrder().flatMap(namesOn)) names.add(name);
  } while (names.size > known);
  return ofOrder();
};

/** The change order at which a chain of them ends: none goes on from its "now". Change that came full circle ends at the last. */
const endOf = (earlier: readonly Earlier[]): Earlier | undefined => {
  const bases = new Set(earlier.map(({ base }) => base));
  return earlier.filter(({ now }) => !bases.has(now)).at(-1) ?? earlier.at(-1);
};

/** Refuses a base that isn't where the change orders before it end: a change would be counted twice, or never. */
export const refuseOffChain = (earlier: readonly Earlier[], base: string): void => {
  const end = endOf(earlier);
  if (end?.now === undefined || end.now === base) return;
  throw new InputError(
    `"${end.sheet}" ends at "${end.now}": go on from there. From "${base}" a change would be counted twice, or never. Nothing was written.`,
  );
};
