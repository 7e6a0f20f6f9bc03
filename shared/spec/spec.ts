import type { Argument, Answer, Cell } from "../cell";
import { flag } from "../kinds/flag";
import { NAME_ENDINGS, readAs, type Filled, type Kind } from "../kinds/kind";
import type { ResultKind } from "../result";

/** The folders of `functions/`, in the order in which a person would look for them. */
export const CONCEPTS = [
  "measure",
  "panel",
  "slope",
  "courses",
  "stagger",
  "layout",
  "roof",
  "trim",
  "deck",
  "orders",
  "money",
  "practice",
  "about",
] as const;
type Concept = (typeof CONCEPTS)[number];

export interface Parameter<T> {
  /** Ends in the unit of a bare number: `slopeLengthFt`, `exposureIn`. */
  readonly name: string;
  /** The name without its unit, as error messages use it: `slopeLength`. */
  readonly label: string;
  readonly kind: Kind<T>;
  readonly summary: string;
  readonly optional: boolean;
  /** What a person would type for what holds when it is left out; null: nothing, the function copes. */
  readonly default: Cell;
  /** The default as it is read: once, since a sheet leaves the same out in every row. */
  readonly standard: T | undefined;
}

const UNIT_ENDING = new RegExp(`(?:${NAME_ENDINGS.join("|")})$`);

/** A parameter that must be given. */
export const required = <T>(name: string, kind: Kind<T>, summary: string): Parameter<T> => ({
  name,
  label: name.replace(UNIT_ENDING, ""),
  kind,
  summary,
  optional: false,
  default: null,
  standard: undefined,
});

/** A parameter that may be left out and then is undefined. */
export const omittable = <T>(name: string, kind: Kind<T>, summary: string): Parameter<T | undefined> => ({
  ...required<T | undefined>(name, kind, summary),
  optional: true,
});

/** A parameter with a default, written as a person would type it. */
export const optional = <T>(
  name: string,
  kind: Kind<T>,
  summary: string,
  standard: Filled,
): Parameter<T> => ({
  ...required(name, kind, summary),
  optional: true,
  default: standard,
  standard: readAs(kind, standard, name),
});

/** A worked example: shown in help, and run as a test. */
interface Example {
  readonly args: readonly Argument[];
  readonly result: Answer;
  /** Where the result comes from, other than from this code. */
  readonly from: string;
}

interface Description {
  readonly id: string;
  readonly concept: Concept;
  readonly summary: string;
  /** In words and signs, for help. */
  readonly formula: string;
  readonly source: string;
  readonly examples: readonly Example[];
}

/** A function as every host sees it. */
export interface FunctionSpec extends Description {
  readonly parameters: readonly Parameter<unknown>[];
  /** The heading of a column of its results, with the unit where it has one; a table has a heading for each column instead. */
  readonly heading?: string;
  readonly result: ResultKind;
  /** Present for a function that answers with a table; one column a heading. */
  readonly columns?: readonly TableColumn[];
  /** Takes the parameters' values in order, already read and checked. */
  readonly calculate: (...values: never[]) => Answer;
}

export interface TableColumn {
  readonly heading: string;
  readonly result: ResultKind;
}

type ValuesOf<P extends readonly Parameter<unknown>[]> = {
  [K in keyof P]: P[K] extends Parameter<infer T> ? T : never;
};

/** Describes a function that answers with one value. The compiler checks it against its parameters. */
export const defineFunction = <const P extends readonly Parameter<unknown>[]>(
  spec: Description & {
    readonly parameters: P;
    /** The heading of a column of its results: `Courses`, `Hip (ft)`. */
    readonly heading: string;
    readonly result: ResultKind;
    readonly calculate: (...values: ValuesOf<P>) => Exclude<Cell, null>;
  },
): FunctionSpec => ({ ...spec, calculate: spec.calculate as unknown as FunctionSpec["calculate"] });

const HEADINGS = optional("headings", flag, "FALSE leaves out the heading row.", true);

/**
 * Describes a function that spills a table; adds the last parameter, `headings`. An argument may leave out columns at
 * the end: the headings are as many as the cells of a row.
 */
export const defineTable = <const P extends readonly Parameter<unknown>[]>(
  spec: Description & {
    readonly parameters: P;
    readonly columns: readonly TableColumn[];
    readonly calculate: (...values: ValuesOf<P>) => readonly (readonly Cell[])[];
  },
): FunctionSpec => ({
  ...spec,
  parameters: [...spec.parameters, HEADINGS],
  result: { unit: "table", numberFormat: "General" },
  calculate: (...valuesAndHeadings: unknown[]) => {
    const withHeadings = valuesAndHeadings[spec.parameters.length] as boolean;
    const rows = spec.calculate(...(valuesAndHeadings.slice(0, spec.parameters.length) as ValuesOf<P>));
    if (!withHeadings) return rows;
    const shown = spec.columns.slice(0, rows[0]?.length ?? spec.columns.length);
    return [shown.map((column) => column.heading), ...rows];
  },
});
