import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { buildSync, transformSync, version } from "esbuild";
import { isEngineScript, withFieldHelpers } from "../../src/build/engineFields.mjs";

/** A package of a thousand modules, of which the engine uses three functions: one module of them loads twenty times as fast. */
const BUNDLED = /[\\/]node_modules[\\/]cjk-regex[\\/]/;

/** For all of them: Jest loads CommonJS. */
const COMMON = { format: "cjs", target: "es2022", supported: { "dynamic-import": false } };

const recipe = `${version} ${readFileSync(fileURLToPath(import.meta.url), "utf8")}`;

const bundle = (path) => {
  const { outputFiles } = buildSync({ ...COMMON, entryPoints: [path], bundle: true, write: false });
  return { code: outputFiles[0].text };
};

/** What Jest runs in place of a TypeScript file, or of a package's ES module. `tsc` has checked the types. */
export default {
  getCacheKey: (source, path) => createHash("sha256").update(`${recipe}\0${path}\0${source}`).digest("hex"),
  process: (source, path) =>
    isEngineScript(path)
      ? { code: withFieldHelpers(source) }
      : BUNDLED.test(path)
        ? bundle(path)
        : transformSync(source, {
            ...COMMON,
            loader: /\.tsx?$/.exec(path)?.[0].slice(1) ?? "js",
            jsx: "automatic",
            jsxImportSource: "preact",
            sourcemap: true,
            sourcefile: path,
          }),
};
