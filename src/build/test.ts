import { spawn, type SpawnOptions } from "node:child_process";
import { existsSync, readdirSync, statSync } from "node:fs";
import { availableParallelism } from "node:os";
import { join } from "node:path";
import { ROOT, WEB } from "./paths";

/**
 * `npm test`: types, lint, format, spelling and the build beside each other, then every test. `npm test -- path/to/file`: the
 * tests of that path only, after a build where they are browser tests and the site is missing or older than its sources.
 */

interface Outcome {
  readonly succeeded: boolean;
  readonly output: string;
}

const run = (
  program: string,
  args: readonly string[],
  options: Pick<SpawnOptions, "stdio" | "shell">,
): Promise<Outcome> =>
  new Promise((resolve, reject) => {
    const child = spawn(program, args, { cwd: ROOT, ...options });
    const output: Buffer[] = [];
    for (const stream of [child.stdout, child.stderr])
      stream?.on("data", (data: Buffer) => output.push(data));
    child.on("error", reject);
    child.on("close", (status) => {
      resolve({ succeeded: status === 0, output: Buffer.concat(output).toString() });
    });
  });

/** A script of package.json. */
const runScript = (name: string, stdio: "inherit" | "pipe"): Promise<Outcome> =>
  run("npm", ["run", "--silent", name], { stdio, shell: process.platform === "win32" });

const runJest = (args: readonly string[], stdio: "inherit" | "pipe"): Promise<Outcome> =>
  run(process.execPath, [join(ROOT, "node_modules/jest/bin/jest.js"), ...args], { stdio });

/** The longest first, so that none is left to run alone. */
const STEPS = ["build", "lint", "types", "formatting", "spelling"];

/** Runs the steps, as many at once as there are processors, and says of each how it ended. */
const prepare = async (): Promise<boolean> => {
  const waiting = STEPS.values();
  let succeeded = true;
  const work = async (): Promise<void> => {
    for (const step of waiting) {
      const start = Date.now();
      const outcome = await runScript(step, "pipe");
      succeeded &&= outcome.succeeded;
      const seconds = ((Date.now() - start) / 1000).toFixed(0);
      process.stdout.write(
        `${outcome.output}${outcome.succeeded ? "passed" : "FAILED"}: ${step} (${seconds} s)\n`,
      );
    }
  };
  await Promise.all(Array.from({ length: availableParallelism() }, work));
  return succeeded;
};

const SOURCES = ["src", "functions", "shared", "manifest.xml", "package-lock.json"];

const lastChange = (): number =>
  Math.max(
    ...SOURCES.flatMap((source) => {
      const path = join(ROOT, source);
      const inside = statSync(path).isDirectory()
        ? readdirSync(path, { recursive: true, encoding: "utf8" })
        : [];
      return [path, ...inside.map((each) => join(path, each))].map((each) => statSync(each).mtimeMs);
    }),
  );

/** Sees to it that browser tests find a site to open. */
const ensureSite = async (args: readonly string[]): Promise<boolean> => {
  const listed = await runJest(["--listTests", ...args], "pipe");
  if (!/tests[\\/]browser[\\/]/.test(listed.output)) return true;
  const page = join(WEB, "index.html");
  if (existsSync(page) && statSync(page).mtimeMs > lastChange()) {
    process.stdout.write(
      `The browser opens the site as built ${statSync(page).mtime.toLocaleString("en-US")}: no source is newer.\n`,
    );
    return true;
  }
  return (await runScript("build", "inherit")).succeeded;
};

const test = async (args: readonly string[]): Promise<boolean> => {
  const isReady = args.length === 0 ? await prepare() : await ensureSite(args);
  return isReady && (await runJest(args, "inherit")).succeeded;
};

test(process.argv.slice(2)).then(
  (succeeded) => {
    process.exitCode = succeeded ? 0 : 1;
  },
  (failure: unknown) => {
    process.stderr.write(`${String(failure)}\n`);
    process.exitCode = 1;
  },
);
