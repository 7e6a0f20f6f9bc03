// Installs the lockfile's packages if they are missing or older than the lockfile. It runs before everything else, so it uses only
// Node itself. npm's output goes to stderr, because stdout belongs to the script that runs next.
import { spawnSync } from "node:child_process";
import { existsSync, statSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../../", import.meta.url));
const installed = `${root}node_modules/.package-lock.json`;
const isCurrent =
  existsSync(installed) && statSync(installed).mtimeMs >= statSync(`${root}package-lock.json`).mtimeMs;

if (!isCurrent) {
  const { status } = spawnSync("npm", ["ci", "--ignore-scripts"], {
    cwd: root,
    stdio: ["ignore", process.stderr, process.stderr],
    shell: process.platform === "win32",
  });
  process.exit(status ?? 1);
}
