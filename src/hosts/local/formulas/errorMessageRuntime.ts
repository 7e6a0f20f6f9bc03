import type { Injector } from "@univerjs/core";
import {
  FormulaRuntimeService,
  IFormulaCurrentConfigService,
  IFormulaRuntimeService,
  IHyperlinkEngineFormulaService,
  type FunctionVariantType,
} from "@univerjs/engine-formula";
import type { ErrorMessages } from "../engine/errorMessages";

/** The engine's runtime, which also records the message of every error that it writes to a cell. */
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

/** Call it after the plugins are registered and before the first workbook is created; later the runtime exists already. */
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
