import { join } from "node:path";
import type { Configuration } from "webpack";
import { compile } from "./compile";
import { ROOT } from "./paths";
import { SCRIPTS } from "./webpackConfig";

/** The bench bundled as what ships is bundled: run straight from its sources it would time the tool that reads them, too. */
const config: Configuration = {
  mode: "production",
  target: "node",
  context: ROOT,
  entry: join(ROOT, "tests/bench/bench.ts"),
  output: { path: join(ROOT, "dist/bench"), filename: "bench.js" },
  // Where the bench looks for files it reckons from its own folder, as its sources do.
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
