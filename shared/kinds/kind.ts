import type { Cell, Matrix } from "../cell";

/** A cell that holds something, and no error: the runner has dealt with those before a kind reads. */
export type Filled = Exclude<Cell, null>;

/** What one cell may hold, and how it is read. `label` is the parameter's name for the sentence of an error. */
export interface CellKind<T> {
  readonly shape: "cell";
  /** Completes "slopeLength takes ..." in errors and help. */
  readonly takes: string;
  read(cell: Filled, label: string): T;
}

/** What a whole block of cells may hold. Cells may be blank; none holds an error. */
export interface RangeKind<T> {
  readonly shape: "range";
  readonly takes: string;
  read(cells: Matrix, label: string): T;
}

export type Kind<T> = CellKind<T> | RangeKind<T>;
