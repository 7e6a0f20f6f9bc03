import { InputError } from "../../../shared/inputError";
import type { Contents } from "../contents";
import { takenFrom } from "../signedBase/readSigned";
import { agreedChangeOrdersIn, type Earlier } from "./earlier";

/** The names of the sheets whose order a change order compares. */
const namesOn = (workbook: Contents, { base, now }: Earlier): string[] =>
  [base, now].flatMap((sheet) => (sheet === undefined ? [] : (takenFrom(workbook, sheet) ?? [])));

/** One that has lost both its sheets may be of any order: it counts, and its error shows. */
const ofNames = (workbook: Contents, names: ReadonlySet<string>): Earlier[] =>
  agreedChangeOrdersIn(workbook).filter((each) => {
    const on = namesOn(workbook, each);
    return on.length === 0 || on.some((name) => names.has(name));
  });

/** What the sheet of one order was called, that name first: a change order from one name to another ties them. */
export const namesOfOrder = (workbook: Contents, from: string): ReadonlySet<string> => {
  const names = new Set([from]);
  let known: number;
  do {
    known = names.size;
    for (const name of ofNames(workbook, names).flatMap((each) => namesOn(workbook, each))) names.add(name);
  } while (names.size > known);
  return names;
};

/** The change orders of one order, without drafts. */
export const changeOrdersOf = (workbook: Contents, from: string): Earlier[] =>
  ofNames(workbook, namesOfOrder(workbook, from));

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
