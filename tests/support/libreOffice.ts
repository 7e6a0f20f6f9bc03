import { execFile } from "node:child_process";
import { existsSync } from "node:fs";
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";

const CANDIDATES = [process.env.SOFFICE, "/usr/bin/soffice", "/usr/bin/libreoffice"];

const found = CANDIDATES.find((path) => path !== undefined && existsSync(path));

/** CI sets this: there a missing LibreOffice is a failure, not a skip. */
const isRequired = process.env.GABLEWRIGHT_LIBREOFFICE === "required";

const HOW_TO_INSTALL =
  "skipped, no LibreOffice found: install it (Debian: apt-get install libreoffice-calc) or name its path in SOFFICE";

/** `describe` where there is a LibreOffice (or must be one); else a suite that is reported as skipped, with what to do. */
export const describeWithLibreOffice = (title: string, suite: () => void): void => {
  if (found !== undefined || isRequired) describe(title, suite);
  else describe.skip(`${title} (${HOW_TO_INSTALL})`, suite);
};

const run = promisify(execFile);

/** Converts a file from one format to another; a filter such as `xlsx` or `csv:...`. */
export const convert = async (bytes: Uint8Array | string, from: string, to: string): Promise<Buffer> => {
  if (found === undefined) throw new Error(HOW_TO_INSTALL);
  const folder = await mkdtemp(join(tmpdir(), "gablewright-"));
  try {
    await writeFile(join(folder, `in.${from}`), bytes);
    // A profile of its own: a LibreOffice that is open elsewhere would take the call and say nothing.
    const profile = `-env:UserInstallation=file://${join(folder, "profile")}`;
    const args = [
      profile,
      "--headless",
      "--convert-to",
      to,
      "--outdir",
      join(folder, "out"),
      join(folder, `in.${from}`),
    ];
    await run(found, args, { timeout: 60_000 });
    return await readFile(join(folder, "out", `in.${to.split(":")[0]}`));
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
};
