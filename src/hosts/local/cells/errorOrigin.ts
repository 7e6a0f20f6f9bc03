import type { Injector, Workbook, Worksheet } from "@univerjs/core";
import {
  deserializeRangeWithSheet,
  IDefinedNamesService,
  IFunctionService,
  LexerTreeBuilder,
  sequenceNodeType,
  type ISequenceNode,
} from "@univerjs/engine-formula";
import { CellError, type Cell } from "../../../../shared/cell";
import { a1 } from "../../../workbook/address";
import { errorMeaning } from "../formulas/errorMeaning";
import { formulaAt } from "./survey";

type ReadCell = (sheet: Worksheet, row: number, column: number) => Cell;

interface WorksheetCell {
  readonly sheet: Worksheet;
  readonly row: number;
  readonly column: number;
}

/** Longer chains than this are not followed: formulas may refer in a ring. */
const MOST_STEPS = 12;

/** The address that a part of a formula refers to, itself or by a name, which the engine takes for a function's. */
const addressOf = (
  injector: Injector,
  workbook: Workbook,
  { nodeType, token }: ISequenceNode,
): string | undefined => {
  if (nodeType === sequenceNodeType.REFERENCE) return token;
  if (nodeType !== sequenceNodeType.FUNCTION) return undefined;
  return injector.get(IDefinedNamesService).getValueByName(workbook.getUnitId(), token)?.formulaOrRefString;
};

/** The cells that a formula refers to, by their addresses or by names. */
const referencesOf = (
  injector: Injector,
  workbook: Workbook,
  { sheet, row, column }: WorksheetCell,
): WorksheetCell[] => {
  const formula = formulaAt(injector, sheet, row, column);
  const nodes = injector.get(LexerTreeBuilder).sequenceNodesBuilder(formula) ?? [];
  return nodes.flatMap((node) => {
    const address = typeof node === "string" ? undefined : addressOf(injector, workbook, node);
    if (address === undefined) return [];
    const { sheetName, range } = deserializeRangeWithSheet(address);
    const target = sheetName === "" ? sheet : workbook.getSheetBySheetName(sheetName);
    if (!target || Number.isNaN(range.startRow) || Number.isNaN(range.startColumn)) return [];
    const spots: WorksheetCell[] = [];
    for (let r = range.startRow; r <= range.endRow; r++)
      for (let c = range.startColumn; c <= range.endColumn; c++)
        spots.push({ sheet: target, row: r, column: c });
    return spots;
  });
};

/** What the error in a cell means where its function says nothing: in the spreadsheet's own words. */
const ownMeaning = (injector: Injector, { sheet, row, column }: WorksheetCell, { code }: CellError): string =>
  errorMeaning(
    code,
    formulaAt(injector, sheet, row, column),
    Array.from(injector.get(IFunctionService).getExecutors().keys(), String),
  );

/**
 * What an error in a cell means where its own formula has no words for it: native functions pass an error on without its
 * sentence, so the cell that the formula leads back to is asked. Empty text where nothing is known of it.
 */
export const errorOrigin = (
  injector: Injector,
  workbook: Workbook,
  read: ReadCell,
  start: WorksheetCell,
): string => {
  const errorAt = ({ sheet, row, column }: WorksheetCell): CellError | undefined => {
    const cell = read(sheet, row, column);
    return cell instanceof CellError ? cell : undefined;
  };
  let spot = start;
  for (let step = 0; step < MOST_STEPS; step++) {
    const error = errorAt(spot);
    if (!error) return "";
    // An error is passed on as it is: one of another kind is the formula's own.
    const source =
      error.message === ""
        ? referencesOf(injector, workbook, spot).find((each) => errorAt(each)?.code === error.code)
        : undefined;
    if (source) {
      spot = source;
      continue;
    }
    const meaning = error.message || ownMeaning(injector, spot, error);
    if (spot === start || meaning === "") return meaning;
    const place = spot.sheet === start.sheet ? a1(spot) : `${spot.sheet.getName()}, ${a1(spot)}`;
    return `Comes from ${place}: ${meaning}`;
  }
  return "";
};
