import { BooleanNumber } from "@univerjs/core";
import {
  BaseFunction,
  FunctionType,
  type BaseValueObject,
  type IFunctionInfo,
  type IUniverEngineFormulaConfig,
} from "@univerjs/engine-formula";
import { qualifiedName } from "../../../workbook/namespace";
import type { CustomFunction } from "./customFunction";
import type { ErrorMessages } from "../engine/errorMessages";
import { fromAnswer, toArgument } from "./valueConversion";

type FunctionClasses = NonNullable<IUniverEngineFormulaConfig["function"]>;

/** One class per function: the engine creates the instances itself, so each class closes over its function. */
export const functionClasses = (
  catalog: readonly CustomFunction[],
  errorMessages: ErrorMessages,
): FunctionClasses =>
  catalog.map((entry) => {
    class GableFunction extends BaseFunction {
      // minParams and maxParams stay unset: the engine would give #N/A without a message, and our function names what is missing.
      override calculate(...values: BaseValueObject[]): BaseValueObject {
        const args = values.map((value) =>
          toArgument(value, (unitId, sheetId, row, column, code) =>
            errorMessages.at({ unitId, sheetId, row, column }, code),
          ),
        );
        return fromAnswer(entry.call(...args));
      }
    }
    return [GableFunction, qualifiedName(entry)];
  });

/** The help that the workbook shows while a formula is typed. */
export const functionDescriptions = (catalog: readonly CustomFunction[]): IFunctionInfo[] =>
  catalog.map((entry) => ({
    functionName: qualifiedName(entry),
    functionType: FunctionType.User,
    description: entry.summary,
    abstract: entry.summary,
    functionParameter: entry.parameters.map((parameter) => ({
      name: parameter.name,
      detail: parameter.summary,
      example: parameter.example,
      require: parameter.optional ? BooleanNumber.FALSE : BooleanNumber.TRUE,
      repeat: BooleanNumber.FALSE,
    })),
  }));
