// Runs before anything else, so it may use nothing but Node itself: installs the packages of the lockfile where they
// are missing or older than it. npm's own words go to the error stream, since a script's output belongs to the script.
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
