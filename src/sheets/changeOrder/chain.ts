import { InputError } from "../../../shared/inputError";
import type { Earlier } from "./earlier";

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
