import { isMatrix, type Answer, type Argument, type Matrix } from "../../../shared/cell";
import type { FunctionSpec, Parameter } from "../../../shared/spec/spec";
import { typedCell } from "../../workbook/typedCell";
import { a1, areaAddress, sheetPrefix, type Area, type CellAddress } from "../../workbook/address";
import { typedArgument } from "./typedArgument";
import { call } from "../../workbook/formula";
import { includesName } from "../../workbook/uniqueName";
import type { CellPatch, PatchCell } from "../../workbook/patch";
import { formula } from "../../workbook/plan";

/** An argument that the user gives: typed text, a name in the workbook, or cells that were clicked. */
export type Given =
  | { readonly kind: "typed"; readonly typed: string }
  | { readonly kind: "name"; readonly name: string; readonly cells: Matrix | undefined }
  | { readonly kind: "cells"; readonly sheet: string; readonly area: Area; readonly cells: Matrix };

export const NOTHING: Given = { kind: "typed", typed: "" };

/** Whether typed text is a defined name of the workbook. */
export const isNameOf = (names: readonly string[], typed: string): boolean =>
  /^[A-Za-z_]\w*$/.test(typed.trim()) && includesName(names, typed.trim());

/** The argument in a formula on `sheet`; undefined if omitted. */
const operand = (
  spec: FunctionSpec,
  parameter: Parameter<unknown>,
  given: Given,
  sheet: string,
): string | undefined => {
  if (given.kind === "typed") return typedArgument(spec, parameter, given.typed);
  if (given.kind === "name") return given.name;
  return `${given.sheet === sheet ? "" : sheetPrefix(given.sheet)}${areaAddress(given.area)}`;
};

/** The formula that calls the function. Throws an InputError if a parameter doesn't accept its argument. */
export const formulaOf = (spec: FunctionSpec, given: readonly Given[], sheet: string): string => {
  const operands = spec.parameters.map((parameter, index) =>
    operand(spec, parameter, given[index] ?? NOTHING, sheet),
  );
  const last = operands.findLastIndex((each) => each !== undefined);
  return `=${call(spec, ...operands.slice(0, last + 1).map((each) => each ?? ""))}`;
};

/** The values of the arguments, to calculate the result before the formula is inserted. */
export const argumentsOf = (given: readonly Given[]): Argument[] =>
  given.map((each) => (each.kind === "typed" ? typedCell(each.typed) : (each.cells ?? undefined)));

/** Writes the formula into one cell. The cells that its table will spill into must be blank. */
export const insertPlan = (
  sheet: string,
  at: CellAddress,
  spec: FunctionSpec,
  text: string,
  answer: Answer,
): CellPatch => {
  const [rows, columns] = isMatrix(answer) ? [answer.length, answer[0]?.length ?? 1] : [1, 1];
  const anchor: PatchCell = { content: formula(text), numberFormat: spec.result.numberFormat };
  return {
    sheet,
    at,
    cells: Array.from({ length: rows }, (_, row) =>
      Array.from({ length: columns }, (_each, column) => (row === 0 && column === 0 ? anchor : null)),
    ),
  };
};

/** Where a formula would go: `F12 on "Bid"`. */
export const placeInWords = (sheet: string, at: CellAddress): string => `${a1(at)} on "${sheet}"`;
