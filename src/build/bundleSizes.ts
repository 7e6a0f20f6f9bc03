import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";

/** What a slow office connection can take, in kB gzipped. */
const BUDGETS: readonly {
  readonly bundle: string;
  readonly files: readonly string[];
  readonly mostKb: number;
}[] = [
  { bundle: "custom functions", files: ["functions.js"], mostKb: 60 },
  { bundle: "task pane", files: ["taskpane.js", "taskpane.css"], mostKb: 150 },
];

export interface BundleSize {
  readonly bundle: string;
  readonly kb: number;
  readonly mostKb: number;
}

const gzippedKb = (file: string): number => gzipSync(readFileSync(file)).length / 1000;

/** The size of each bundle and its limit. */
export const bundleSizes = (folder: string): BundleSize[] =>
  BUDGETS.map(({ bundle, files, mostKb }) => ({
    bundle,
    kb: files.reduce((sum, file) => sum + gzippedKb(join(folder, file)), 0),
    mostKb,
  }));
