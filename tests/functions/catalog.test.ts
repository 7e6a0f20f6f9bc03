import { readdirSync } from "node:fs";
import { join } from "node:path";
import { isMatrix, type Answer } from "../../shared/cell";
import { NAME_ENDINGS } from "../../shared/kinds/kind";
import { runFunction } from "../../shared/spec/runner";
import { CONCEPTS, type FunctionSpec } from "../../shared/spec/spec";
import { catalog } from "../../functions/index";

const FUNCTIONS = join(__dirname, "../../functions");

/** Numbers of an example are published to about seven digits; text and shape are exact. */
const expectAnswer = (answer: Answer, expected: Answer): void => {
  if (isMatrix(expected)) {
    expect(isMatrix(answer) && answer.map((row) => row.length)).toEqual(expected.map((row) => row.length));
    expected.forEach((row, r) => {
      row.forEach((cell, c) => {
        expectAnswer((answer as typeof expected)[r]?.[c] ?? null, cell);
      });
    });
  } else if (typeof expected === "number") {
    expect(typeof answer).toBe("number");
    expect(Math.abs((answer as number) - expected)).toBeLessThanOrEqual(
      1e-9 * Math.max(1, Math.abs(expected)),
    );
  } else {
    expect(answer).toEqual(expected);
  }
};

/** Units that a name could end in, in the singular and the plural. */
const UNIT_WORD =
  /(?:Sq|Cu)?(?:Lb|Oz|Kg|G|Ton|Tonne|Yd|Yard|Foot|Feet|Ft|Inch|Inches|In|Mil|Mm|Cm|M|Meter|Mi|Km|Gal|L|Psf|Psi|Pcf|Kpa|C|F|Pct|Percent|Deg|Degree|Rad|Radian|Sec|Second|Min|Minute|Hr|Hour|Day|Week|Dollar|Usd|Cent|Square)s?$/;

describe("every example in the catalog is true", () => {
  for (const spec of catalog)
    for (const { args, result, from } of spec.examples)
      it(`${spec.id}(${args.map((each) => JSON.stringify(each)).join(", ")}): ${from}`, () => {
        expectAnswer(runFunction(spec, args), result);
      });
});

/** Old macro functions and references that a function's name must not look like. */
const LOOKS_LIKE_A_CELL = /^(?:[A-Z]{1,3}\d+|R\d*C\d*|[RC]\d*)$/;
const OLD_MACRO_NAMES = [
  "ABSREF",
  "ALERT",
  "CALL",
  "ECHO",
  "EXEC",
  "GOTO",
  "HALT",
  "INPUT",
  "NOTE",
  "RETURN",
  "RUN",
  "STEP",
];

describe("the catalog", () => {
  it("lists every specification in functions/", async () => {
    const files = readdirSync(FUNCTIONS, { recursive: true, encoding: "utf8" }).filter(
      (file) => file.endsWith(".ts") && file !== "index.ts",
    );
    const modules = await Promise.all(
      files.map(async (file) => [file, await import(join(FUNCTIONS, file))] as const),
    );
    const specs = modules.flatMap(([, module]: readonly [string, Record<string, unknown>]) =>
      Object.entries(module)
        .filter(([name]) => name.endsWith("Spec"))
        .map(([, value]) => value as FunctionSpec),
    );
    expect(
      specs
        .filter((spec) => !catalog.includes(spec))
        .map(({ id }) => `list the specification of ${id} in functions/index.ts, under its concept`),
    ).toEqual([]);
    expect(specs.map(({ id }) => id).sort()).toEqual(catalog.map(({ id }) => id).sort());
    specs.forEach((spec) => {
      expect(catalog).toContain(spec);
    });
  });

  it("groups functions by concept, in the concepts' order", () => {
    const order = catalog.map(({ concept }) => CONCEPTS.indexOf(concept));
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  it.each(catalog.map((spec) => [spec.id, spec] as const))(
    "%s has a name that a spreadsheet accepts",
    (id) => {
      expect(id).toMatch(/^[A-Z][A-Z]{2,}$/);
      expect(id).not.toMatch(LOOKS_LIKE_A_CELL);
      expect(OLD_MACRO_NAMES).not.toContain(id);
      expect(catalog.filter((other) => other.id === id)).toHaveLength(1);
    },
  );

  it.each(catalog.map((spec) => [spec.id, spec] as const))("%s says what it needs to", (_, spec) => {
    expect(spec.summary).toMatch(/\.$/);
    expect(spec.formula).not.toBe("");
    expect(spec.source).not.toBe("");
    expect(spec.heading).not.toBe("");
    expect(spec.examples.length).toBeGreaterThan(0);
    spec.parameters.forEach((parameter) => {
      expect(parameter.name).toMatch(/^[a-z][A-Za-z]+$/);
      expect(parameter.summary).toMatch(/\.$/);
    });
    const firstOptional = spec.parameters.findIndex(({ optional }) => optional);
    if (firstOptional >= 0)
      expect(spec.parameters.slice(firstOptional).every(({ optional }) => optional)).toBe(true);
  });

  it.each(
    catalog.flatMap(({ id, parameters }) => parameters.map(({ name, kind }) => [id, name, kind] as const)),
  )("%s: the name of %s tells the unit of a bare number", (_, name, kind) => {
    expect(NAME_ENDINGS.find((ending) => name.endsWith(ending))).toBe(kind.nameEnding);
  });

  it("uses no unit in a name that isn't known, so that nothing takes a number for another unit", () => {
    const unknown = catalog.flatMap(({ id, parameters }) =>
      parameters
        .filter(({ name, kind }) => kind.nameEnding === undefined && UNIT_WORD.test(name))
        .map(
          ({ name }) =>
            `${id}: ${name} ends in ${UNIT_WORD.exec(name)?.[0] ?? ""}, which no kind reads. Add the unit to UNIT_OF_NAME_ENDING in shared/kinds/kind.ts and a kind with it in shared/kinds/number.ts, or choose a name without a unit`,
        ),
    );
    expect(unknown).toEqual([]);
  });

  it("gives every table function headings that can be left out", () => {
    for (const spec of catalog.filter(({ columns }) => columns)) {
      const [example] = spec.examples;
      const args = [...(example?.args ?? [])];
      while (args.length < spec.parameters.length - 1) args.push(undefined);
      const withHeadings = runFunction(spec, args);
      const without = runFunction(spec, [...args, false]);
      expect(without).toEqual((withHeadings as unknown[]).slice(1));
    }
  });
});
