import { catalog } from "../../../functions/index";
import { outlineSpec } from "../../../functions/layout/outline";
import { flag } from "../../../shared/kinds/flag";
import type { Parameter } from "../../../shared/spec/spec";
import { unitOf, type UnitName } from "./unit";

/** What a column holds: the label of the parameters that take it, such as `slopeLength`. */
export type Meaning = string;

/** Parameters with different labels that mean the same in a column. */
const SAME: Readonly<Record<string, Meaning>> = { lengths: "length", count: "quantity" };

export const meaningOf = ({ label }: Parameter<unknown>): Meaning => SAME[label] ?? label;

/** Functions of one value; and OUTLINE, which makes a plane's corners from columns (see `rowExpressions.ts`). */
const specs = [...catalog.filter(({ columns, concept }) => !columns && concept !== "panel"), outlineSpec];

/** Whether a cell of each row can be its argument: not a whole block, and not a TRUE/FALSE option. */
const takesColumn = (parameter: Parameter<unknown>): boolean =>
  parameter.kind !== flag && (parameter.kind.shape === "cell" || meaningOf(parameter) === "length");

const parametersByMeaning = new Map<Meaning, Parameter<unknown>>();
for (const parameter of specs.flatMap(({ parameters }) => parameters).filter(takesColumn)) {
  const meaning = meaningOf(parameter);
  if (!parametersByMeaning.has(meaning)) parametersByMeaning.set(meaning, parameter);
}

/** Everything that a column may mean, in the catalog's order. */
export const MEANINGS: readonly Meaning[] = [...parametersByMeaning.keys()];

/** The unit of plain numbers if the heading names none. */
export const usualUnit = (meaning: Meaning): UnitName => {
  const parameter = parametersByMeaning.get(meaning);
  return parameter ? unitOf(parameter) : "plain";
};
