import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join, relative, sep } from "node:path";
import { bundleSizes, type BundleSize } from "./bundleSizes";
import { compile } from "./compile";
import { withIntegrity } from "./integrity";
import { filesToKeep } from "./keptFiles";
import { webpackConfig, type BuildOptions } from "./webpackConfig";

const pathsIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .sort();

const stampPages = (folder: string): void => {
  for (const page of pathsIn(folder).filter((path) => path.endsWith(".html"))) {
    const file = join(folder, page);
    const contentOf = (address: string): Buffer => readFileSync(join(dirname(file), address));
    writeFileSync(file, withIntegrity(readFileSync(file, "utf8"), contentOf));
  }
};

const listKeptFiles = (folder: string): void => {
  const worker = join(folder, "service-worker.js");
  const files = pathsIn(folder).map((path) => ({ path, content: readFileSync(join(folder, path)) }));
  writeFileSync(worker, filesToKeep(files) + readFileSync(worker, "utf8"));
};

/** Builds everything that is served and returns the bundle sizes. A bundle over its limit is an error. */
export const bundle = async (options: BuildOptions): Promise<readonly BundleSize[]> => {
  await compile(webpackConfig(options));
  stampPages(options.folder);
  listKeptFiles(options.folder);
  const sizes = bundleSizes(options.folder);
  const over = sizes.find(({ kb, mostKb }) => kb > mostKb);
  if (over)
    throw new Error(
      `the ${over.bundle} bundle has ${over.kb.toFixed(1)} kB gzipped, more than ${over.mostKb} kB`,
    );
  return sizes;
};

export const sizesInWords = (sizes: readonly BundleSize[]): string =>
  sizes
    .map(({ bundle: name, kb, mostKb }) => `${name}: ${kb.toFixed(1)} kB gzipped (at most ${mostKb})\n`)
    .join("");
