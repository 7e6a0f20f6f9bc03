import { isMatrix, type Cell, type Matrix } from "../cell";

/** A cell that holds something, and no error: the runner has dealt with those before a kind reads. */
export type Filled = Exclude<Cell, null>;

/** The unit of a bare number, by the ending of the parameter's name. */
export const UNIT_OF_NAME_ENDING = {
  SqFt: "sq ft",
  Ft: "ft",
  In: "in",
  Degrees: "degrees",
  F: "°F",
} as const;
export type NameEnding = keyof typeof UNIT_OF_NAME_ENDING;
/** `SqFt` comes before `Ft`, which it also ends in. */
export const NAME_ENDINGS = Object.keys(UNIT_OF_NAME_ENDING) as NameEnding[];

/** What one cell may hold, and how it is read. `label` is the parameter's name in error messages. */
export interface CellKind<T> {
  readonly shape: "cell";
  /** Completes "slopeLength takes ..." in errors and help. */
  readonly takes: string;
  /** Absent where a bare number has no unit, or the same one for every parameter, as a pitch's. */
  readonly nameEnding?: NameEnding;
  /** What a bare number is where no name has to say it: a rise on 12, or a share of 1. */
  readonly bareNumber?: "rise" | "fraction";
  read(cell: Filled, label: string): T;
}

/** What a whole block of cells may hold. Cells may be blank; none holds an error. */
export interface RangeKind<T> {
  readonly shape: "range";
  readonly takes: string;
  readonly nameEnding?: NameEnding;
  read(cells: Matrix, label: string): T;
}

export type Kind<T> = CellKind<T> | RangeKind<T>;

/** Reads what came; a single cell is a block of one to a kind that takes blocks. */
export const readAs = <T>(kind: Kind<T>, given: Filled | Matrix, label: string): T =>
  kind.shape === "cell"
    ? kind.read(given as Filled, label)
    : kind.read(isMatrix(given) ? given : [[given]], label);
