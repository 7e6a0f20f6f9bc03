import { existsSync, readdirSync } from "node:fs";

/** A file that every package has. */
const OURS = "functions.json";

/** Refuses a folder that holds anything else, because a build empties the folder first. */
export const refuseForeignFolder = (folder: string): void => {
  const names = existsSync(folder) ? readdirSync(folder) : [];
  if (names.length > 0 && !names.includes(OURS))
    throw new Error(
      `--out takes a new or empty folder, or one with an earlier package, which is replaced; "${folder}" holds something else. Nothing was written.`,
    );
};
