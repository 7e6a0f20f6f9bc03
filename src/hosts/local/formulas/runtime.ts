import type { Injector } from "@univerjs/core";
import {
  FormulaRuntimeService,
  IFormulaCurrentConfigService,
  IFormulaRuntimeService,
  IHyperlinkEngineFormulaService,
  type FunctionVariantType,
} from "@univerjs/engine-formula";
import type { Sentences } from "../engine/sentences";

/** The engine's own runtime, which also writes down the sentence of every error as it fills a cell. */
class SpeakingRuntime extends FormulaRuntimeService {
  constructor(
    config: IFormulaCurrentConfigService,
    hyperlinks: IHyperlinkEngineFormulaService,
    private readonly sentences: Sentences,
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
    this.sentences.record(place, result);
    super.setRuntimeData(result);
  }
}

/** Call it after the plugins are registered and before the first workbook exists: later the runtime is already made. */
export const keepSentences = (injector: Injector, sentences: Sentences): void => {
  injector.replace([
    IFormulaRuntimeService,
    {
      useFactory: (config: IFormulaCurrentConfigService, hyperlinks: IHyperlinkEngineFormulaService) =>
        new SpeakingRuntime(config, hyperlinks, sentences),
      deps: [IFormulaCurrentConfigService, IHyperlinkEngineFormulaService],
    },
  ]);
};
