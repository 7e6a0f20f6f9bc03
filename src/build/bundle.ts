import { bundleSizes, type BundleSize } from "./bundleSizes";
import { compile } from "./compile";
import { webpackConfig, type BuildOptions } from "./webpackConfig";

/** Builds everything that is served and returns the bundle sizes. A bundle over its limit is an error. */
export const bundle = async (options: BuildOptions): Promise<readonly BundleSize[]> => {
  await compile(webpackConfig(options));
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
