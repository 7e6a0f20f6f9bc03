import type * as Core from "@univerjs/core";
import type * as FormulaEngine from "@univerjs/engine-formula";
import type * as Headless from "../../../../src/hosts/local/workbook/headless";

/** What a test asks of the copy of the engine that lacks a fix; another copy's services wouldn't be found in it. */
interface EngineWithout {
  readonly createHeadlessEngine: typeof Headless.createHeadlessEngine;
  readonly core: typeof Core;
  readonly formulaEngine: typeof FormulaEngine;
}

/** A fresh copy of the engine in which one function of an engine fix does nothing. */
export const engineWithout = (fix: string, functionName: string): EngineWithout => {
  const loaded: EngineWithout[] = [];
  jest.isolateModules(() => {
    const path = `../../../../src/hosts/local/engineFixes/${fix}`;
    const own = jest.requireActual<Readonly<Record<string, unknown>>>(path);
    if (!(functionName in own)) throw new Error(`${fix}.ts exports no ${functionName}.`);
    jest.doMock(path, () => ({ ...own, [functionName]: () => undefined }));
    loaded.push({
      createHeadlessEngine: jest.requireActual<typeof Headless>(
        "../../../../src/hosts/local/workbook/headless",
      ).createHeadlessEngine,
      core: jest.requireActual<typeof Core>("@univerjs/core"),
      formulaEngine: jest.requireActual<typeof FormulaEngine>("@univerjs/engine-formula"),
    });
  });
  const [engine] = loaded;
  if (!engine) throw new Error("The engine wasn't loaded.");
  return engine;
};

/** A fresh copy of the formula engine with no fix at all. */
export const unfixedFormulaEngine = (): typeof FormulaEngine => {
  const loaded: (typeof FormulaEngine)[] = [];
  jest.isolateModules(() => {
    loaded.push(jest.requireActual<typeof FormulaEngine>("@univerjs/engine-formula"));
  });
  const [engine] = loaded;
  if (!engine) throw new Error("The engine wasn't loaded.");
  return engine;
};
