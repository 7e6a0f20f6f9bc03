import { execFileSync } from "node:child_process";
import { copyFileSync, existsSync, mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import { ROOT } from "../../../src/build/paths";

type Packages = Readonly<Record<string, { version: string; optional?: true }>>;

const LOCKED: Packages = {
  "": { version: "0.1.0" },
  "node_modules/grid": { version: "2.0.0" },
  "node_modules/for-another-system": { version: "1.0.0", optional: true },
};

const INSTALLED: Packages = { "node_modules/grid": { version: "2.0.0" } };

/** Runs the script in a project of its own, where npm only leaves a mark. */
const asksNpm = (installed: Packages | undefined): boolean => {
  const root = mkdtempSync(join(tmpdir(), "gablewright-install-"));
  try {
    const write = (path: string, packages: Packages): void => {
      writeFileSync(join(root, path), JSON.stringify({ packages }));
    };
    mkdirSync(join(root, "src/build"), { recursive: true });
    mkdirSync(join(root, "node_modules"));
    copyFileSync(join(ROOT, "src/build/install.mjs"), join(root, "src/build/install.mjs"));
    if (installed) write("node_modules/.package-lock.json", installed);
    write("package-lock.json", LOCKED);
    // A checkout makes the lockfile newer than what was installed from it.
    utimesSync(join(root, "package-lock.json"), new Date(), new Date(Date.now() + 60_000));
    writeFileSync(join(root, "npm"), '#!/bin/sh\necho "$@" > asked\n', { mode: 0o755 });
    execFileSync(process.execPath, [join(root, "src/build/install.mjs")], {
      env: { ...process.env, PATH: `${root}${delimiter}${process.env.PATH ?? ""}` },
    });
    return existsSync(join(root, "asked"));
  } finally {
    rmSync(root, { recursive: true });
  }
};

const onUnix = process.platform === "win32" ? describe.skip : describe;

onUnix(
  "packages are installed before a command (skipped on Windows, where the stand-in for npm can't run)",
  () => {
    it.each([
      ["not if all are there, though the lockfile is newer", INSTALLED, false],
      ["if none is there", undefined, true],
      ["if one is missing", {}, true],
      ["if one has another version", { "node_modules/grid": { version: "1.9.0" } }, true],
    ])("%s", (_, installed, expected) => {
      expect(asksNpm(installed)).toBe(expected);
    });
  },
);
