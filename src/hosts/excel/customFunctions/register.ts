import { runFunction } from "../../../../shared/spec/runner";
import type { FunctionSpec } from "../../../../shared/spec/spec";
import { toArgument, toExcelBlock, type ExcelRuntime } from "./excelValues";

/**
 * Associates every function with Excel's runtime. Excel appends an invocation object to the arguments; our functions
 * don't use it.
 */
export const registerWithExcel = (catalog: readonly FunctionSpec[], runtime: ExcelRuntime): void => {
  for (const spec of catalog)
    runtime.associate(spec.id, (...values: unknown[]) =>
      toExcelBlock(runtime, runFunction(spec, values.slice(0, spec.parameters.length).map(toArgument))),
    );
};
