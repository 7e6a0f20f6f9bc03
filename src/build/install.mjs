// Installs the lockfile's packages if one is missing or has another version. It runs before everything else, so it uses only
// Node itself. npm's output goes to stderr, because stdout belongs to the script that runs next.
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../../", import.meta.url));
const packagesIn = (path) =>
  existsSync(path) ? Object.entries(JSON.parse(readFileSync(path, "utf8")).packages) : [];

/** What npm noted after the last install. */
const installed = new Map(packagesIn(`${root}node_modules/.package-lock.json`));

// The first entry is the project itself. npm leaves out optional packages that are for other systems.
const isCurrent = packagesIn(`${root}package-lock.json`).every(
  ([path, { version, optional }]) => path === "" || optional || installed.get(path)?.version === version,
);

if (!isCurrent) {
  const { status } = spawnSync("npm", ["ci", "--ignore-scripts"], {
    cwd: root,
    stdio: ["ignore", process.stderr, process.stderr],
    shell: process.platform === "win32",
  });
  process.exit(status ?? 1);
}
