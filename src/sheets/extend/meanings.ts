import { catalog } from "../../../functions/index";
import { outlineSpec } from "../../../functions/layout/outline";
import { flag } from "../../../shared/kinds/flag";
import type { Parameter } from "../../../shared/spec/spec";
import { unitOf, type UnitName } from "./unit";

/** What a column holds: the label of the parameters that it can go to, such as `slopeLength`. */
export type Meaning = string;

/** Parameters that mean the same to a person who fills in a column. */
const SAME: Readonly<Record<string, Meaning>> = { lengths: "length", count: "quantity" };

export const meaningOf = ({ label }: Parameter<unknown>): Meaning => SAME[label] ?? label;

/** A table's parameters are its own business, but a plane's outline is made of columns (see `derived.ts`). */
const specs = [...catalog.filter(({ columns, concept }) => !columns && concept !== "panel"), outlineSpec];

/** One cell of a row goes to it: no whole block, and no switch of the function. */
const takesColumn = (parameter: Parameter<unknown>): boolean =>
  parameter.kind !== flag && (parameter.kind.shape === "cell" || meaningOf(parameter) === "length");

const parametersByMeaning = new Map<Meaning, Parameter<unknown>>();
for (const parameter of specs.flatMap(({ parameters }) => parameters).filter(takesColumn)) {
  const meaning = meaningOf(parameter);
  if (!parametersByMeaning.has(meaning)) parametersByMeaning.set(meaning, parameter);
}

/** Everything that a column may mean, in the catalog's order. */
export const MEANINGS: readonly Meaning[] = [...parametersByMeaning.keys()];

/** The unit of a bare number where a heading says none. */
export const usualUnit = (meaning: Meaning): UnitName => {
  const parameter = parametersByMeaning.get(meaning);
  return parameter ? unitOf(parameter) : "plain";
};
