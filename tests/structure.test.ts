import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import ts from "typescript";

const ROOT = join(__dirname, "..");
const ENDINGS = ["", ".ts", ".tsx", "/index.ts"];

const files = ["shared", "functions", "src"].flatMap((folder) =>
  readdirSync(join(ROOT, folder), { recursive: true, encoding: "utf8" })
    .filter((file) => /\.tsx?$/.test(file))
    .map((file) => join(folder, file)),
);
const known = new Set(files);

/** The project's files that a file imports: at the top, later, or for their types only. */
const importsOf = (file: string): string[] =>
  ts
    .preProcessFile(readFileSync(join(ROOT, file), "utf8"))
    .importedFiles.filter(({ fileName }) => fileName.startsWith("."))
    .flatMap(({ fileName }) => {
      const path = normalize(join(dirname(file), fileName));
      return ENDINGS.map((ending) => path + ending).filter((each) => known.has(each));
    });

const imports = new Map(files.map((file) => [file, importsOf(file)]));

/** A way from a file back to itself, if there is one. Whoever is done leads to no circle. */
const circleFrom = (
  file: string,
  way: readonly string[],
  done: Set<string>,
): readonly string[] | undefined => {
  const start = way.indexOf(file);
  if (start >= 0) return [...way.slice(start), file];
  if (done.has(file)) return undefined;
  for (const next of imports.get(file) ?? []) {
    const circle = circleFrom(next, [...way, file], done);
    if (circle) return circle;
  }
  done.add(file);
  return undefined;
};

describe("the folders of shared, functions and src", () => {
  it("are read at all, with what their files import", () => {
    expect(files.length).toBeGreaterThan(400);
    expect(imports.get("functions/courses/courses.ts")).toContain("shared/rounding.ts");
  });

  it("never import each other both ways", () => {
    const pairs = new Set(
      [...imports].flatMap(([file, others]) =>
        others.map((other) => `${dirname(file)} -> ${dirname(other)}`),
      ),
    );
    const bothWays = [...pairs].filter((pair) => {
      const [from = "", to = ""] = pair.split(" -> ");
      return from < to && pairs.has(`${to} -> ${from}`);
    });
    expect(bothWays).toEqual([]);
  });

  it("hold no circle of imports, not even of types", () => {
    const done = new Set<string>();
    const circles = files.flatMap((file) => circleFrom(file, [], done)?.join(" -> ") ?? []);
    expect(circles).toEqual([]);
  });
});
