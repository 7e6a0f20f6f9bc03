/** The Office.js requirement sets that we call on; the manifest declares the same, and a test compares the two. */
export const REQUIREMENTS: readonly (readonly [set: string, version: string])[] = [
  ["SharedRuntime", "1.1"],
  ["CustomFunctionsRuntime", "1.3"],
  ["ExcelApi", "1.13"],
  ["ImageCoercion", "1.2"],
];

/** The sets that this Excel lacks, in words. */
export const missingRequirements = (isSupported: (set: string, version: string) => boolean): string[] =>
  REQUIREMENTS.filter(([set, version]) => !isSupported(set, version)).map(
    ([set, version]) => `${set} ${version}`,
  );
