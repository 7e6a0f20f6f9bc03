import { spawnSync } from "node:child_process";
import { join } from "node:path";

const ROOT = join(__dirname, "..");

interface LintResult {
  readonly messages: readonly { readonly ruleId: string | null }[];
}

/** What the lint says of a piece of code in a file that would stand at this place. */
const complaintsAbout = (file: string, code: string): string[] => {
  const eslint = join(ROOT, "node_modules/eslint/bin/eslint.js");
  const args = [eslint, "--stdin", "--stdin-filename", join(ROOT, file), "--format", "json"];
  const { stdout } = spawnSync(process.execPath, args, { cwd: ROOT, input: code, encoding: "utf8" });
  const [result] = JSON.parse(stdout) as LintResult[];
  return (result?.messages ?? [])
    .map(({ ruleId }) => ruleId ?? "")
    .filter((rule) => rule.startsWith("no-restricted"));
};

describe("arrows point one way: src -> functions -> shared", () => {
  it.each([
    ["shared/x.ts", 'import "../functions/index";'],
    ["shared/kinds/x.ts", 'import "../../src/namespace";'],
    ["functions/slope/x.ts", 'import "../../src/namespace";'],
    ["src/sheets/x.ts", 'import "../../tests/support/call";'],
    ["functions/slope/x.ts", "export const y = document.title;"],
    ["shared/x.ts", 'import "lodash";'],
    ["functions/slope/x.ts", 'import { readFileSync } from "node:fs";'],
    ["functions/slope/x.ts", 'export * from "lodash";'],
    ["functions/slope/x.ts", 'export const y = import("lodash");'],
    ["shared/x.ts", "export const y = Date.now();"],
    ["functions/slope/x.ts", "export const y = new Date();"],
    ["functions/slope/x.ts", "export const y = Date();"],
    ["functions/slope/x.ts", "export const y = Math.random();"],
  ])("%s may not hold %s", (file, code) => {
    expect(complaintsAbout(file, code)).not.toEqual([]);
  });

  it("lets arrows that point the right way pass", () => {
    expect(complaintsAbout("functions/slope/x.ts", 'import "../../shared/units";')).toEqual([]);
    expect(complaintsAbout("src/sheets/x.ts", 'import "../../functions/index";')).toEqual([]);
  });

  it("lets a given date pass, and packages and the clock in src", () => {
    expect(complaintsAbout("shared/x.ts", "export const y = new Date(0);")).toEqual([]);
    expect(complaintsAbout("src/sheets/x.ts", 'import "lodash";\nexport const y = Date.now();')).toEqual([]);
  });
});
