import { InputError } from "../../shared/inputError";
import { sheetPrefix } from "./address";
import type { EnteredContents } from "./enteredContents";
import type { WorkbookPlan } from "./plan";

const refuse = (reason: string): never => {
  throw new InputError(`${reason}. Nothing was undone.`);
};

/** The first cell that differs between two states of a sheet. */
const firstDifference = (
  before: ReadonlyMap<string, unknown>,
  now: ReadonlyMap<string, unknown>,
): string | undefined =>
  [...new Set([...before.keys(), ...now.keys()])].find((address) => before.get(address) !== now.get(address));

/** Whether a formula contains a name on its own, not as part of a longer name. */
const containsName = (formula: string, name: string, partBefore: RegExp, partAfter?: RegExp): boolean => {
  for (let at = formula.indexOf(name); at >= 0; at = formula.indexOf(name, at + 1))
    if (!partBefore.test(formula.charAt(at - 1)) && !partAfter?.test(formula.charAt(at + name.length)))
      return true;
  return false;
};

/** Whether a formula refers to a sheet or a name of the plan. */
const refersTo = (formula: string, { sheets, names }: WorkbookPlan): boolean =>
  sheets.some(
    ({ name }) => formula.includes(sheetPrefix(name)) || containsName(formula, `${name}!`, /[\w']/),
  ) || names.some(({ name }) => containsName(formula.toLowerCase(), name.toLowerCase(), /[\w.]/, /[\w.(]/));

/** Refuses if the added sheets, or the names that came with them, were edited. */
const refuseEdits = (plan: WorkbookPlan, asAdded: EnteredContents, now: EnteredContents): void => {
  for (const { name } of plan.sheets) {
    const sheetNow = now.sheets.get(name);
    if (!sheetNow) return refuse(`There is no sheet "${name}" any more`);
    const changed = firstDifference(asAdded.sheets.get(name) ?? new Map(), sheetNow);
    if (changed !== undefined) refuse(`${changed} on "${name}" has changed since it was built`);
  }
  for (const { name } of plan.names) {
    const target = now.names.get(name);
    if (target !== undefined && target !== asAdded.names.get(name))
      refuse(`The name "${name}" has changed since it was built`);
  }
};

const IS_REMOVED = "refers to a sheet or name that would be removed";

/** Refuses if a formula on another sheet, or a name that someone else defined, refers to what was added. */
const refuseReferences = (plan: WorkbookPlan, asAdded: EnteredContents, now: EnteredContents): void => {
  const added = new Set(plan.sheets.map(({ name }) => name));
  for (const [sheet, cells] of now.sheets)
    for (const [address, content] of cells)
      if (
        !added.has(sheet) &&
        typeof content === "string" &&
        content.startsWith("=") &&
        refersTo(content, plan)
      )
        refuse(`${address} on "${sheet}" ${IS_REMOVED}`);
  for (const [name, target] of now.names)
    if (asAdded.names.get(name) !== target && (refersTo(name, plan) || refersTo(target, plan)))
      refuse(`The name "${name}" ${IS_REMOVED}`);
};

/**
 * Undo may remove added sheets only if nobody has used them since. Throws an InputError if a cell on them was edited, or if
 * a formula or a name elsewhere refers to them: that work would be lost.
 */
export const refuseUndoAfterEdits = (
  plan: WorkbookPlan,
  asAdded: EnteredContents,
  now: EnteredContents,
): void => {
  refuseEdits(plan, asAdded, now);
  refuseReferences(plan, asAdded, now);
};

/** A workbook must keep at least one sheet. Throws an InputError if the added sheets are the only ones left. */
export const refuseUndoOfLastSheets = ({ sheets: added }: WorkbookPlan, now: Iterable<string>): void => {
  if ([...now].every((sheet) => added.some(({ name }) => name === sheet)))
    refuse("The workbook has no other sheets, and it must keep one");
};
