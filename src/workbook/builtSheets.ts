import { InputError } from "../../shared/inputError";
import { sheetPrefix } from "./address";
import type { WorkbookPlan } from "./plan";

/** A formula, or a value where there is none. */
export type EnteredContent = string | number | boolean;

/** What stands in a workbook as it was typed. */
export interface EnteredContents {
  /** By sheet, then by address. */
  readonly sheets: ReadonlyMap<string, ReadonlyMap<string, EnteredContent>>;
  /** What each name stands for. */
  readonly names: ReadonlyMap<string, string>;
}

/** A name that only one sheet knows goes by that sheet, too. */
export const nameKey = (name: string, sheet?: string): string =>
  sheet === undefined ? name : `${sheetPrefix(sheet)}${name}`;

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

const refuse = (sentence: string): never => {
  throw new InputError(`${sentence}. ${NOTHING_UNDONE}`);
};

/** Refuses where the sheets themselves, or the names that came with them, aren't as they were built. */
const refuseEdits = (plan: WorkbookPlan, then: EnteredContents, now: EnteredContents): void => {
  for (const { name } of plan.sheets) {
    const standing = now.sheets.get(name);
    if (!standing) return refuse(`There is no sheet "${name}" any more`);
    const changed = firstDifference(then.sheets.get(name) ?? new Map(), standing);
    if (changed !== undefined) refuse(`${changed} on "${name}" has changed since it was built`);
  }
  for (const { name } of plan.names) {
    const target = now.names.get(name);
    if (target !== undefined && target !== then.names.get(name))
      refuse(`The name "${name}" has changed since it was built`);
  }
};

/** Refuses where a formula on another sheet, or a name of somebody's own, calls on what was built. */
const refuseCalls = (plan: WorkbookPlan, then: EnteredContents, now: EnteredContents): void => {
  const ours = new Set(plan.sheets.map(({ name }) => name));
  for (const [sheet, cells] of now.sheets)
    for (const [address, content] of cells)
      if (
        !ours.has(sheet) &&
        typeof content === "string" &&
        content.startsWith("=") &&
        callsOn(content, plan)
      )
        refuse(`${address} on "${sheet}" calls on what was built`);
  for (const [name, target] of now.names)
    if (then.names.get(name) !== target && (callsOn(name, plan) || callsOn(target, plan)))
      refuse(`The name "${name}" calls on what was built`);
};

/**
 * Sheets that were built may be taken away only as long as nobody has gone on with them: a cell on them that differs from
 * what stood there when they were built, or a formula or a name elsewhere that calls on them, would be lost.
 */
export const refuseGoneOn = (plan: WorkbookPlan, then: EnteredContents, now: EnteredContents): void => {
  refuseEdits(plan, then, now);
  refuseCalls(plan, then, now);
};
