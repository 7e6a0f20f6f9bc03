/** What a spreadsheet cell may hold, in the words of no particular host. */

/** An error value in a cell: `#VALUE!`, `#N/A`, or another that came in and is passed on unchanged. */
export class CellError {
  constructor(
    readonly code: string,
    readonly message: string,
  ) {}
}

/** null is a blank cell. */
export type Cell = number | string | boolean | null | CellError;

/** A block of cells, row by row; every row is of the same length. */
export type Matrix = readonly (readonly Cell[])[];

/** What a host passes for a parameter; undefined is an argument left out. */
export type Argument = Cell | Matrix | undefined;

/** What a function gives back to a host: one cell, or a block that spills. */
export type Answer = Cell | Matrix;

/** Nothing, or white space only, which a person can't tell from nothing. It narrows as if white space were "". */
export const isBlank = (cell: Cell | undefined): cell is null | undefined | "" =>
  cell === null || cell === undefined || (typeof cell === "string" && cell.trim() === "");

export const isMatrix = (argument: Argument): argument is Matrix => Array.isArray(argument);
