import { catalog } from "../../../functions/index";
import { InputError } from "../../../shared/inputError";
import { PANEL_FIELDS } from "../../../shared/kinds/panel";
import { labelInWords } from "../../../shared/spec/parameterCaption";
import type { FunctionSpec, Parameter } from "../../../shared/spec/spec";
import { meaningOf, type Meaning } from "./meanings";
import { suppliedOperand, type MeantColumn, type Supplies } from "./operands";
import { panelFieldOf } from "./panelNames";
import { typedKey } from "./typed";
import { UNITS, unitOf } from "./unit";

/** Something that a person has to type, or may, for a result. */
export interface Field {
  readonly key: string;
  readonly label: string;
  readonly parameter: Parameter<unknown>;
}

/** A result that can be added. */
export interface Offer {
  readonly spec: FunctionSpec;
  readonly heading: string;
  /** The columns that it reads. */
  readonly from: readonly MeantColumn[];
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

/** One typed value can stand for it: no block of cells can. */
const canBeTyped = ({ kind, name }: Parameter<unknown>): boolean =>
  kind.shape === "cell" || (kind.nameEnding !== undefined && name !== "prices");

/** A function that gives one value, so its results fit in a column. */
type OneValue = FunctionSpec & { readonly heading: string };

const offerOf = (spec: OneValue, supplies: Supplies): Offer | undefined => {
  const operands = spec.parameters.map((parameter) => suppliedOperand(spec, parameter, supplies));
  const toType = spec.parameters.filter((_, index) => operands[index] === undefined);
  if (toType.some((parameter) => !parameter.optional && !canBeTyped(parameter))) return undefined;
  return {
    spec,
    heading: spec.heading,
    from: [...new Set(operands.flatMap((operand) => operand?.columns ?? []))],
    fields: [
      ...operands.flatMap((operand) => operand?.asks ?? []),
      ...toType.filter(canBeTyped).map((parameter) => ({ spec, parameter })),
    ].map((asked) => fieldOf(asked.spec, asked.parameter)),
  };
};

const singleValued = catalog.filter(
  (spec): spec is OneValue => spec.heading !== undefined && spec.concept !== "panel",
);

const offersOf = (supplies: Supplies): Offer[] =>
  singleValued.map((spec) => offerOf(spec, supplies)).filter((offer): offer is Offer => offer !== undefined);

/** These differ from row to row, so one typed value for all rows would be wrong: a column, or nothing. */
const PER_ROW: readonly Meaning[] = [
  "eave",
  "slopeLength",
  "run",
  "area",
  "planArea",
  "ceilingArea",
  "length",
  "quantity",
];

const needsAnotherColumn = ({ fields }: Offer): boolean =>
  fields.some(({ parameter }) => !parameter.optional && PER_ROW.includes(meaningOf(parameter)));

const asksForNothing = ({ fields }: Offer): boolean => fields.every(({ parameter }) => parameter.optional);

/** The results that a block's columns can give, in the catalog's order; those that ask for more come last. */
export const offersFor = (supplies: Supplies): Offer[] => {
  const offers = offersOf(supplies).filter((offer) => offer.from.length > 0 && !needsAnotherColumn(offer));
  return [...offers.filter(asksForNothing), ...offers.filter((offer) => !asksForNothing(offer))];
};

/** Results that stand alone, at the selection: everything comes from the panel, or is typed. */
export const offersAlone = (names: readonly string[]): Offer[] => offersOf({ columns: [], names, typed: {} });

export const offerById = (offers: readonly Offer[], id: string): Offer => {
  const offer = offers.find(({ spec }) => spec.id === id);
  if (!offer) throw new InputError(`The columns don't give ${id} any more: choose again what they mean.`);
  return offer;
};
