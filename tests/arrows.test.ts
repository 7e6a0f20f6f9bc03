import { spawnSync } from "node:child_process";
import { join } from "node:path";

const ROOT = join(__dirname, "..");

interface Case {
  readonly file: string;
  readonly code: string;
}

/** Lints every case in one process of its own: the lint is slow to start, and its modules aren't Jest's. */
const LINT_ALL = `
const { ESLint } = require("eslint");
const eslint = new ESLint({ cwd: ${JSON.stringify(ROOT)} });
const cases = JSON.parse(require("fs").readFileSync(0, "utf8"));
Promise.all(cases.map(({ file, code }) => eslint.lintText(code, { filePath: file }))).then((results) =>
  process.stdout.write(JSON.stringify(results.map(([{ messages }]) => messages.map(({ ruleId }) => ruleId)))),
);`;

/** Which of our restrictions each case breaks. */
const brokenRules = (cases: readonly Case[]): string[][] => {
  const { stdout } = spawnSync(process.execPath, ["-e", LINT_ALL], {
    cwd: ROOT,
    input: JSON.stringify(cases.map(({ file, code }) => ({ file: join(ROOT, file), code }))),
    encoding: "utf8",
  });
  return (JSON.parse(stdout) as string[][]).map((rules) =>
    rules.filter((rule) => rule?.startsWith("no-restricted")),
  );
};

const refused = [
  ["src/pictures/x.ts", 'import "../workbook/plan";'],
  ["src/workbook/x.ts", 'import "../sheets/panelSheet";'],
  ["src/workbook/formulas/x.ts", 'import "../../xlsx/xlsxFile";'],
  ["src/sheets/x.ts", 'import "../xlsx/xlsxFile";'],
  ["src/xlsx/x.ts", 'import "../sheets/panelSheet";'],
  ["src/sheets/takeoff/x.ts", 'import "../../practice/problem";'],
  ["src/practice/x.ts", 'import "../help/findFunctions";'],
  ["src/help/x.ts", 'import "../pane/Pane";'],
  ["src/pane/extend/x.ts", 'import "../../hosts/excel/excelHost";'],
  ["src/pane/x.ts", 'import "../server/start";'],
  ["src/hosts/excel/x.ts", 'import "../../build/paths";'],
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
].map(([file = "", code = ""]): Case => ({ file, code }));

const taken = [
  ["functions/slope/x.ts", 'import "../../shared/units";'],
  ["src/sheets/x.ts", 'import "../../functions/index";'],
  ["src/hosts/local/x.ts", 'import "../../pane/mount";'],
  ["src/server/x.ts", 'import "../build/paths";'],
  ["shared/x.ts", "export const y = new Date(0);"],
  ["src/sheets/x.ts", 'import "lodash";\nexport const y = Date.now();'],
].map(([file = "", code = ""]): Case => ({ file, code }));

describe("each layer imports only from those below it", () => {
  const rules = brokenRules([...refused, ...taken]);

  it.each(refused.map(({ file, code }, index) => ({ file, code, index })))(
    "$file may not hold $code",
    ({ index }) => {
      expect(rules[index]).not.toEqual([]);
    },
  );

  it.each(taken.map(({ file, code }, index) => ({ file, code, index })))(
    "$file may hold $code",
    ({ index }) => {
      expect(rules[refused.length + index]).toEqual([]);
    },
  );
});
