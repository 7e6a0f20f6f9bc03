import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const ROOT = join(__dirname, "../../../../..");
const FOLDER = "src/hosts/local/engineFixes";

const read = (path: string): string => readFileSync(join(ROOT, path), "utf8");

const readme = read(`${FOLDER}/README.md`);

/** The table of the README. */
const fixes = readme
  .split("\n")
  .filter((line) => line.startsWith("| `"))
  .map((line) => {
    const [file = "", symptom = "", version = "", applied = "", test = ""] = line
      .split("|")
      .slice(1)
      .map((cell) => cell.trim().replace(/^`|`$/g, ""));
    return { file, symptom, version, applied, test };
  });

const helpers = [...(/^Helpers, [\s\S]*?\n\n/m.exec(readme)?.[0] ?? "").matchAll(/`(\w+\.ts)`(?!\))/g)].map(
  ([, file = ""]) => file,
);

const importsOf = (file: string): string[] =>
  [...read(`${FOLDER}/${file}`).matchAll(/from "\.\/(\w+)"/g)].map(([, name = ""]) => `${name}.ts`).sort();

const appliedAt = (when: string): string[] =>
  fixes
    .filter(({ applied }) => applied === when)
    .map(({ file }) => file)
    .sort();

describe("the table of engine fixes", () => {
  it("lists every file of the folder once, as a fix or as a helper", () => {
    const files = readdirSync(join(ROOT, FOLDER)).filter((file) => file.endsWith(".ts"));
    expect([...fixes.map(({ file }) => file), ...helpers].sort()).toEqual(files.sort());
  });

  it("says where each fix is applied, as the code does", () => {
    expect(appliedAt("before start")).toEqual(importsOf("applyBeforeStart.ts"));
    expect(appliedAt("after start")).toEqual(importsOf("applyAfterStart.ts"));
    expect(fixes.length - appliedAt("before start").length - appliedAt("after start").length).toBe(
      appliedAt("on demand").length,
    );
  });

  const { dependencies } = JSON.parse(read("package.json")) as { dependencies: Record<string, string> };
  const versions = new Set(
    Object.entries(dependencies).flatMap(([name, version]) =>
      name.startsWith("@univerjs/") ? [version] : [],
    ),
  );

  it.each(fixes)("has the symptom of $file, checked with the installed version", ({ symptom, version }) => {
    expect(symptom).not.toBe("");
    expect([...versions]).toEqual([version]);
  });

  it.each(fixes)("names the test of $file, which shows the engine without the fix", ({ test }) => {
    const browserTest = /^Page only: `(tests\/browser\/\w+\.test\.ts)$/.exec(test)?.[1];
    if (browserTest === undefined) expect(read(test)).toContain("without the fix");
    else expect(read(browserTest)).not.toBe("");
  });
});
