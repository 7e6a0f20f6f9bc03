import type { Injector, Workbook } from "@univerjs/core";
import {
  CalculateFormulaService,
  ICalculateFormulaService,
  IFormulaCurrentConfigService,
  IFormulaRuntimeService,
  type BaseReferenceObject,
  type BaseValueObject,
} from "@univerjs/engine-formula";
import { CellError, isMatrix, type Matrix } from "../../../../shared/cell";
import type { ErrorMessages } from "../engine/errorMessages";
import { toAnswer } from "./valueConversion";

export type Evaluation =
  | { readonly kind: "value"; readonly value: string | number | boolean | null }
  | { readonly kind: "table"; readonly table: Matrix }
  | { readonly kind: "error"; readonly code: string; readonly message: string }
  | { readonly kind: "unparsable" };

/** Evaluates a formula that is in no cell, so nothing can block its spill. */
export const evaluateFormula = async (
  injector: Injector,
  workbook: Workbook,
  errorMessages: ErrorMessages,
  formula: string,
): Promise<Evaluation> => {
  const calculator = injector.get(ICalculateFormulaService);
  // The service's interface declares no result for calculate; its only class does.
  if (!(calculator instanceof CalculateFormulaService))
    throw new Error("The engine has an unknown calculator.");
  const text = formula.trim();
  // The engine throws on an empty formula.
  if (/^=?$/.test(text)) return { kind: "unparsable" };
  injector.get(IFormulaCurrentConfigService).loadDataLite();
  const runtime = injector.get(IFormulaRuntimeService);
  runtime.reset();
  const sheet = workbook.getActiveSheet();
  runtime.setCurrent(
    0,
    0,
    sheet.getRowCount(),
    sheet.getColumnCount(),
    sheet.getSheetId(),
    workbook.getUnitId(),
  );
  const result = await calculator.calculate(text.startsWith("=") ? text : `=${text}`);
  if (result === undefined) return { kind: "unparsable" };
  const value = result.isReferenceObject()
    ? (result as BaseReferenceObject).toArrayValueObject()
    : (result as BaseValueObject);
  const answer = toAnswer(value, (unitId, sheetId, row, column, code) =>
    errorMessages.at({ unitId, sheetId, row, column }, code),
  );
  if (answer instanceof CellError) return { kind: "error", code: answer.code, message: answer.message };
  return isMatrix(answer) ? { kind: "table", table: answer } : { kind: "value", value: answer };
};
