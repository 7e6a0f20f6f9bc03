import type { Injector } from "@univerjs/core";
import {
  FormulaRuntimeService,
  IFormulaCurrentConfigService,
  IFormulaRuntimeService,
  IHyperlinkEngineFormulaService,
  type FunctionVariantType,
} from "@univerjs/engine-formula";
import type { ErrorMessages } from "../engine/errorMessages";

/** The engine's own runtime, which also writes down the sentence of every error as it fills a cell. */
class ErrorMessageRuntime extends FormulaRuntimeService {
  constructor(
    config: IFormulaCurrentConfigService,
    hyperlinks: IHyperlinkEngineFormulaService,
    private readonly errorMessages: ErrorMessages,
  ) {
    super(config, hyperlinks);
  }

  override setRuntimeData(result: FunctionVariantType): void {
    const place = {
      unitId: this.currentUnitId,
      sheetId: this.currentSubUnitId,
      row: this.currentRow,
      column: this.currentColumn,
    };
    this.errorMessages.record(place, result);
    super.setRuntimeData(result);
  }
}

/** Call it after the plugins are registered and before the first workbook exists: later the runtime is already made. */
export const recordErrorMessages = (injector: Injector, errorMessages: ErrorMessages): void => {
  injector.replace([
    IFormulaRuntimeService,
    {
      useFactory: (config: IFormulaCurrentConfigService, hyperlinks: IHyperlinkEngineFormulaService) =>
        new ErrorMessageRuntime(config, hyperlinks, errorMessages),
      deps: [IFormulaCurrentConfigService, IHyperlinkEngineFormulaService],
    },
  ]);
};
