import { InputError } from "../../../shared/inputError";
import type { Contents } from "../../workbook/contents";
import { sourceSheetOf } from "../signedOrder/readSignedOrder";
import { agreedChangeOrdersIn, sheetsListedOn, type ExistingChangeOrder } from "./existingChangeOrders";

/** The names of the sheets whose order a change order compares. */
const namesOn = (workbook: Contents, { base, now }: ExistingChangeOrder): string[] =>
  [base, now].flatMap((sheet) => (sheet === undefined ? [] : (sourceSheetOf(workbook, sheet) ?? [])));

/** One that has lost both its sheets may be of any order: it counts, and its error shows. */
const ofNames = (workbook: Contents, names: ReadonlySet<string>): ExistingChangeOrder[] =>
  agreedChangeOrdersIn(workbook).filter((each) => {
    const on = namesOn(workbook, each);
    return on.length === 0 || on.some((name) => names.has(name));
  });

/** All names that an order's sheet has had, `from` first: a change order from one name to another links them. */
export const namesOfOrder = (workbook: Contents, from: string): ReadonlySet<string> => {
  const names = new Set([from]);
  let known: number;
  do {
    known = names.size;
    for (const name of ofNames(workbook, names).flatMap((each) => namesOn(workbook, each))) names.add(name);
  } while (names.size > known);
  return names;
};

/** By which lists which, the last at the end: a person may have moved their tabs. */
const inSequence = (
  workbook: Contents,
  changeOrders: readonly ExistingChangeOrder[],
): ExistingChangeOrder[] => {
  const listed = new Map(changeOrders.map((each) => [each.sheet, sheetsListedOn(workbook, each)]));
  const addBefore = (sheet: string, before: Set<string>): Set<string> => {
    for (const name of listed.get(sheet) ?? []) if (!before.has(name)) addBefore(name, before.add(name));
    return before;
  };
  const place = new Map(changeOrders.map(({ sheet }) => [sheet, addBefore(sheet, new Set()).size]));
  return [...changeOrders].sort((a, b) => (place.get(a.sheet) ?? 0) - (place.get(b.sheet) ?? 0));
};

/** The change orders of one order as they were made, without drafts. */
export const changeOrdersOfOrder = (workbook: Contents, from: string): ExistingChangeOrder[] =>
  inSequence(workbook, ofNames(workbook, namesOfOrder(workbook, from)));

/** Refuses a base that isn't where the change orders before it end: a change would be counted twice, or never. */
export const refuseOutOfSequence = (previous: readonly ExistingChangeOrder[], base: string): void => {
  const end = previous.at(-1);
  if (end?.now === undefined || end.now === base) return;
  throw new InputError(
    `"${end.sheet}" ends at "${end.now}": go on from there. From "${base}" a change would be counted twice, or never. Nothing was written.`,
  );
};
