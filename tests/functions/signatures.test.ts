import { readFileSync } from "node:fs";
import { join } from "node:path";
import { catalog } from "../../functions/index";
import { CONCEPTS } from "../../shared/spec/spec";

const PROMISE = "functions/README.md";
const promise = readFileSync(join(__dirname, "../..", PROMISE), "utf8");

/** The lines under a concept's heading, each a function with its parameters. */
const promised = (concept: string): string[] => {
  const [, section = ""] = promise.split(`### ${concept}\n`);
  const [lines = ""] = section.split("\n###");
  return lines.split("\n").filter((line) => line.startsWith("- "));
};

const lineOf = ({ id, parameters }: (typeof catalog)[number]): string =>
  `- \`${id}(${parameters.map(({ name, optional }) => (optional ? `[${name}]` : name)).join(", ")})\``;

describe("saved workbooks keep working: function names and the order of parameters", () => {
  it.each(CONCEPTS.map((concept) => ({ concept })))("holds for $concept", ({ concept }) => {
    const written = promised(concept);
    const actual = catalog.filter((spec) => spec.concept === concept).map(lineOf);
    expect([
      ...actual
        .filter((line) => !written.includes(line))
        .map((line) => `add this line to ${PROMISE}, under ${concept}: ${line}`),
      ...written
        .filter((line) => !actual.includes(line))
        .map((line) => `${PROMISE} promises what no longer exists, and workbooks would break: ${line}`),
    ]).toEqual([]);
    expect(written).toEqual(actual);
  });
});
