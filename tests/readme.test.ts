import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";

const ROOT = join(__dirname, "..");
const readme = readFileSync(join(ROOT, "README.md"), "utf8");

describe("the README", () => {
  it("points only at files that are there", () => {
    const targets = [...readme.matchAll(/\]\((?!https?:)([^)#]+)/g)].map((match) => match[1] ?? "");
    expect(targets.length).toBeGreaterThan(1);
    targets.forEach((target) => {
      expect(existsSync(join(ROOT, target))).toBe(true);
    });
  });
});
