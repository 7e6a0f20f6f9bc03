import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { catalog } from "../functions/index";
import { CONCEPTS } from "../shared/spec/spec";

const ROOT = join(__dirname, "..");
const readme = readFileSync(join(ROOT, "README.md"), "utf8");

describe("the README", () => {
  it("lists every function under its concept, in the catalog's order", () => {
    for (const concept of CONCEPTS) {
      const ids = catalog.filter((spec) => spec.concept === concept).map(({ id }) => `\`${id}\``);
      expect(readme).toContain(`- ${concept}: ${ids.join(" ")}\n`);
    }
  });

  it("points only at files that are there", () => {
    const targets = [...readme.matchAll(/\]\((?!https?:)([^)#]+)/g)].map((match) => match[1] ?? "");
    expect(targets.length).toBeGreaterThan(1);
    targets.forEach((target) => {
      expect(existsSync(join(ROOT, target))).toBe(true);
    });
  });
});
