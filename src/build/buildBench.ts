import { join } from "node:path";
import type { Configuration } from "webpack";
import { compile } from "./compile";
import { ROOT } from "./paths";
import { SCRIPTS } from "./webpackConfig";

/** Bundles the bench the way the product is bundled. Run from its sources, it would also time the tool that reads them. */
const config: Configuration = {
  mode: "production",
  target: "node",
  context: ROOT,
  entry: join(ROOT, "tests/bench/bench.ts"),
  output: { path: join(ROOT, "dist/bench"), filename: "bench.js" },
  // The bench finds files relative to its own folder, as its sources do.
  node: { __dirname: false },
  resolve: SCRIPTS.resolve,
  module: SCRIPTS.module,
  externals: [
    ({ request = "" }, answer) => {
      if (/^[./]/.test(request)) answer();
      else answer(undefined, `commonjs ${request}`);
    },
  ],
  performance: { hints: false },
  stats: "errors-warnings",
};

compile(config).catch((failure: unknown) => {
  process.stderr.write(`${failure instanceof Error ? failure.message : String(failure)}\n`);
  process.exitCode = 1;
});
