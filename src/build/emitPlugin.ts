import { sources, type Compiler, Compilation } from "webpack";

/** Adds one generated text file to the build. */
export class EmitPlugin {
  constructor(
    private readonly fileName: string,
    private readonly makeText: () => string,
  ) {}

  apply(compiler: Compiler): void {
    const hook = { name: "EmitPlugin", stage: Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL };
    compiler.hooks.thisCompilation.tap("EmitPlugin", (compilation) => {
      compilation.hooks.processAssets.tap(hook, () => {
        compilation.emitAsset(this.fileName, new sources.RawSource(this.makeText()));
      });
    });
  }
}
