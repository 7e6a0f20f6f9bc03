import { InputError } from "../../shared/inputError";
import { sheetPrefix } from "./address";
import type { WorkbookPlan } from "./plan";

/** What stands in cells as it was typed: formulas, and values where there is none; by sheet, then by address. */
export type Typed = ReadonlyMap<string, ReadonlyMap<string, string | number | boolean>>;

const NOTHING_UNDONE = "Nothing was undone.";

/** The first cell that differs between two states of a sheet. */
const firstDifference = (
  then: ReadonlyMap<string, unknown>,
  now: ReadonlyMap<string, unknown>,
): string | undefined =>
  [...new Set([...then.keys(), ...now.keys()])].find((address) => then.get(address) !== now.get(address));

/** Whether a word stands in a formula otherwise than as a part of a longer one. */
const standsIn = (formula: string, word: string, partBefore: RegExp, partAfter?: RegExp): boolean => {
  for (let at = formula.indexOf(word); at >= 0; at = formula.indexOf(word, at + 1))
    if (!partBefore.test(formula.charAt(at - 1)) && !partAfter?.test(formula.charAt(at + word.length)))
      return true;
  return false;
};

/** Whether a formula calls on a sheet or a name of the plan. */
const callsOn = (formula: string, { sheets, names }: WorkbookPlan): boolean =>
  sheets.some(({ name }) => formula.includes(sheetPrefix(name)) || standsIn(formula, `${name}!`, /[\w']/)) ||
  names.some(({ name }) => standsIn(formula.toLowerCase(), name.toLowerCase(), /[\w.]/, /[\w.(]/));

/**
 * Sheets that were built may be taken away only as long as nobody has gone on with them: a cell on them that differs from
 * what stood there when they were built, or a formula elsewhere that calls on them, would be lost.
 */
export const refuseGoneOn = (plan: WorkbookPlan, then: Typed, now: Typed): void => {
  const ours = new Set(plan.sheets.map(({ name }) => name));
  for (const name of ours) {
    const standing = now.get(name);
    if (!standing) throw new InputError(`There is no sheet "${name}" any more. ${NOTHING_UNDONE}`);
    const changed = firstDifference(then.get(name) ?? new Map(), standing);
    if (changed !== undefined)
      throw new InputError(`${changed} on "${name}" has changed since it was built. ${NOTHING_UNDONE}`);
  }
  for (const [sheet, cells] of now)
    for (const [address, content] of cells)
      if (
        !ours.has(sheet) &&
        typeof content === "string" &&
        content.startsWith("=") &&
        callsOn(content, plan)
      )
        throw new InputError(`${address} on "${sheet}" calls on what was built. ${NOTHING_UNDONE}`);
};
