import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { dirname, join } from "node:path";

const ROOT = join(__dirname, "..");

const guidesIn = (folder: string): string[] =>
  readdirSync(join(ROOT, folder), { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith("README.md"))
    .map((file) => join(folder, file));

const guides = ["README.md", "DEVELOPERS.md", ...["shared", "functions", "src", "tests"].flatMap(guidesIn)];

const textOf = (guide: string): string => readFileSync(join(ROOT, guide), "utf8");

describe.each(guides)("%s", (guide) => {
  it("links only to files that exist", () => {
    const targets = [...textOf(guide).matchAll(/\]\((?!https?:)([^)#]+)/g)].map((match) => match[1] ?? "");
    expect(targets.filter((target) => !existsSync(join(ROOT, dirname(guide), target)))).toEqual([]);
  });

  it("names only paths that exist", () => {
    const paths = [...textOf(guide).matchAll(/`((?:src|functions|shared|tests)\/[\w./-]+)`/g)].map(
      (match) => match[1] ?? "",
    );
    expect(paths.filter((path) => !existsSync(join(ROOT, path)))).toEqual([]);
  });
});

test("DEVELOPERS.md fits two screens", () => {
  const lines = textOf("DEVELOPERS.md").split("\n").length;
  expect(lines).toBeLessThanOrEqual(100);
  expect(statSync(join(ROOT, "DEVELOPERS.md")).size).toBeLessThan(12_000);
});
