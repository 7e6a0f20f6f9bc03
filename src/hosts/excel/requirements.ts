/** The Office.js requirement sets that we use. The manifest declares the same; a test compares them. */
export const REQUIREMENTS: readonly (readonly [set: string, version: string])[] = [
  ["SharedRuntime", "1.1"],
  ["CustomFunctionsRuntime", "1.3"],
  ["ExcelApi", "1.13"],
  ["ImageCoercion", "1.2"],
];

/** The requirement sets that this Excel lacks, such as `ExcelApi 1.13`. */
export const missingRequirements = (isSupported: (set: string, version: string) => boolean): string[] =>
  REQUIREMENTS.filter(([set, version]) => !isSupported(set, version)).map(
    ([set, version]) => `${set} ${version}`,
  );
