import type { Injector, Workbook, Worksheet } from "@univerjs/core";
import { IFunctionService } from "@univerjs/engine-formula";
import { CellError } from "../../../../shared/cell";
import { cellsOf, referencesIn } from "../../../sheets/trace/references";
import { workbookReader, type WorkbookReader } from "../../../sheets/trace/workbookReader";
import { a1 } from "../../../workbook/address";
import { definedNamesIn } from "../engine/definedNames";
import { errorMeaning } from "../formulas/errorMeaning";
import { usedSize, type ReadCell } from "./readSheet";
import { formulaAt } from "./survey";

interface WorksheetCell {
  readonly sheet: Worksheet;
  readonly row: number;
  readonly column: number;
}

/** Longer chains aren't followed: formulas may be circular. */
const MOST_STEPS = 12;

const engineReader = (injector: Injector, workbook: Workbook, read: ReadCell): WorkbookReader =>
  workbookReader(
    (name) => {
      const sheet = workbook.getSheetBySheetName(name);
      if (!sheet) return undefined;
      return { ...usedSize(injector, sheet), valueAt: ({ row, column }) => read(sheet, row, column) };
    },
    definedNamesIn(injector, workbook).map(({ name, target }) => [name, target] as const),
  );

/** The meaning of an error whose function has no message for it, in general words. */
const generalMeaning = (
  injector: Injector,
  { sheet, row, column }: WorksheetCell,
  { code }: CellError,
): string =>
  errorMeaning(
    code,
    formulaAt(injector, sheet, row, column),
    Array.from(injector.get(IFunctionService).getExecutors().keys(), String),
  );

/**
 * What the error in a cell means. Native functions pass an error on without its message, so the chain of formulas is followed back
 * to the cell that the error comes from. Empty text where nothing is known of it.
 */
export const errorOrigin = (
  injector: Injector,
  workbook: Workbook,
  read: ReadCell,
  start: WorksheetCell,
): string => {
  const reader = engineReader(injector, workbook, read);
  const errorAt = ({ sheet, row, column }: WorksheetCell): CellError | undefined => {
    const cell = read(sheet, row, column);
    return cell instanceof CellError ? cell : undefined;
  };
  /** The first cell that a formula refers to with the same error: a different one would be the formula's own. */
  const sourceOf = ({ sheet, row, column }: WorksheetCell, code: string): WorksheetCell | undefined => {
    for (const reference of referencesIn(formulaAt(injector, sheet, row, column), sheet.getName(), reader)) {
      const target = workbook.getSheetBySheetName(reference.sheet);
      const source = cellsOf(reference, reader)
        .flatMap((cell) => (target ? [{ ...cell, sheet: target }] : []))
        .find((cell) => errorAt(cell)?.code === code);
      if (source) return source;
    }
    return undefined;
  };
  let cell = start;
  for (let step = 0; step < MOST_STEPS; step++) {
    const error = errorAt(cell);
    if (!error) return "";
    const source = error.message === "" ? sourceOf(cell, error.code) : undefined;
    if (source) {
      cell = source;
      continue;
    }
    const meaning = error.message || generalMeaning(injector, cell, error);
    if (cell === start || meaning === "") return meaning;
    const place = cell.sheet === start.sheet ? a1(cell) : `${cell.sheet.getName()}, ${a1(cell)}`;
    return `Comes from ${place}: ${meaning}`;
  }
  return "";
};
