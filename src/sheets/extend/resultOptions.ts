import { catalog } from "../../../functions/index";
import { InputError } from "../../../shared/inputError";
import { PANEL_FIELDS } from "../../../shared/kinds/panel";
import { labelInWords } from "../../../shared/spec/parameterCaption";
import type { FunctionSpec, Parameter } from "../../../shared/spec/spec";
import { meaningOf } from "./meanings";
import { inputExpression, type MappedColumn, type AvailableInputs } from "./rowExpressions";
import { panelFieldOf } from "./panelNames";
import { typedKey } from "./typedArgument";
import { UNITS, unitOf } from "./unit";

/** A value that the user must or may type for a result. */
export interface Field {
  readonly key: string;
  readonly label: string;
  readonly parameter: Parameter<unknown>;
}

/** A result that can be added. */
export interface ResultOption {
  readonly spec: FunctionSpec;
  readonly heading: string;
  /** The columns that its formula uses. */
  readonly from: readonly MappedColumn[];
  readonly fields: readonly Field[];
}

const fieldOf = (spec: FunctionSpec, parameter: Parameter<unknown>): Field => {
  const unit = unitOf(parameter);
  const { label } = UNITS[unit];
  const panelField = panelFieldOf(spec, parameter);
  const name = panelField ? PANEL_FIELDS[panelField].label : labelInWords(parameter.label);
  return {
    key: typedKey(spec, parameter),
    label: unit === "plain" || unit === "fraction" ? name : `${name} (${label})`,
    parameter,
  };
};

/** Whether one typed value can be its argument. A block of cells can't be typed. */
const canBeTyped = ({ kind, name }: Parameter<unknown>): boolean =>
  kind.shape === "cell" || (kind.nameEnding !== undefined && name !== "prices");

/** A function that gives one value, so its results fit in a column. */
type OneValue = FunctionSpec & { readonly heading: string };

const offerOf = (spec: OneValue, inputs: AvailableInputs): ResultOption | undefined => {
  const expressions = spec.parameters.map((parameter) => inputExpression(spec, parameter, inputs));
  const toType = spec.parameters.filter((_, index) => expressions[index] === undefined);
  if (toType.some((parameter) => !parameter.optional && !canBeTyped(parameter))) return undefined;
  return {
    spec,
    heading: spec.heading,
    from: [...new Set(expressions.flatMap((expression) => expression?.columns ?? []))],
    fields: [
      ...expressions.flatMap((expression) => expression?.typedParameters ?? []),
      ...toType.filter(canBeTyped).map((parameter) => ({ spec, parameter })),
    ].map((each) => fieldOf(each.spec, each.parameter)),
  };
};

const singleValued = catalog.filter(
  (spec): spec is OneValue => spec.heading !== undefined && spec.concept !== "panel",
);

const offersOf = (inputs: AvailableInputs): ResultOption[] =>
  singleValued
    .map((spec) => offerOf(spec, inputs))
    .filter((option): option is ResultOption => option !== undefined);

/**
 * Whether a required value differs from row to row, so that it must come from a column: one typed value for all rows would be wrong.
 * What is measured on the roof is in feet or square feet. Sizes of products are in inches.
 */
export const differsFromRowToRow = (parameter: Parameter<unknown>): boolean =>
  !parameter.optional && (["ft", "sqFt"].includes(unitOf(parameter)) || meaningOf(parameter) === "quantity");

const needsAnotherColumn = ({ fields }: ResultOption): boolean =>
  fields.some(({ parameter }) => differsFromRowToRow(parameter));

const asksForNothing = ({ fields }: ResultOption): boolean =>
  fields.every(({ parameter }) => parameter.optional);

/** The results that a block's columns can give, in the catalog's order; those that need typed values come last. */
export const resultOptions = (inputs: AvailableInputs): ResultOption[] => {
  const options = offersOf(inputs).filter((option) => option.from.length > 0 && !needsAnotherColumn(option));
  return [...options.filter(asksForNothing), ...options.filter((option) => !asksForNothing(option))];
};

/** Results at the selection, without columns: every input is typed or comes from the panel sheet. */
export const singleResultOptions = (names: readonly string[]): ResultOption[] =>
  offersOf({ columns: [], names, typed: {} });

export const optionById = (options: readonly ResultOption[], id: string): ResultOption => {
  const option = options.find(({ spec }) => spec.id === id);
  if (!option) throw new InputError(`The columns don't give ${id} any more: choose what they mean again.`);
  return option;
};
