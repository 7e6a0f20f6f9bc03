import { fraction } from "../../../../shared/kinds/number";
import { pitch } from "../../../../shared/kinds/pitch";
import { required } from "../../../../shared/spec/spec";
import { localCatalog } from "../../../../src/hosts/local/formulas/catalog";
import { createHeadlessEngine, type HeadlessEngine } from "../../../../src/hosts/local/workbook/headless";
import { convertedCell, unitOf, type UnitName } from "../../../../src/sheets/extend/unit";

let engine: HeadlessEngine;

beforeAll(() => {
  engine = createHeadlessEngine(localCatalog);
});

afterAll(() => {
  engine.dispose();
});

const inCell = async (content: string | number | null, from: UnitName, to: UnitName): Promise<unknown> => {
  engine.setCell({ sheet: "Sheet1", row: 3, column: 2 }, content);
  await engine.calculated();
  const result = await engine.evaluate(`=${convertedCell("C4", from, to)}`);
  return result.kind === "value" ? result.value : result;
};

describe("a cell on its way to a parameter of another unit", () => {
  it.each([
    [168, "in", "ft", 14],
    [14, "ft", "in", 168],
    [3.048, "m", "ft", 10],
    [2.54, "m", "in", 100],
    [30.48, "cm", "ft", 1],
    [25.4, "mm", "in", 1],
    [3, "yd", "ft", 9],
    [9.290304, "sqM", "sqFt", 100],
    [2, "sqYd", "sqFt", 18],
    [4.2, "squares", "sqFt", 420],
    [45, "degrees", "rise", 12],
    [50, "percent", "rise", 6],
    [0.5, "share", "rise", 6],
    [10, "hundredths", "fraction", 0.1],
    [0, "in", "ft", 0],
  ] as const)("%d in %s is in %s %d", async (value, from, to, expected) => {
    expect(await inCell(value, from, to)).toBeCloseTo(expected, 9);
  });

  it("stays as it is where it is text, which carries its own unit", async () => {
    expect(await inCell("14' 6\"", "in", "ft")).toBe("14' 6\"");
  });

  it("stays blank where it is blank: a missing length is no length of 0", async () => {
    expect(await inCell(null, "in", "ft")).toBe("");
  });

  it("isn't touched where the units are the same, or can't be compared", () => {
    expect(convertedCell("C4", "ft", "ft")).toBe("C4");
    expect(convertedCell("C4", "plain", "ft")).toBe("C4");
  });
});

describe("the unit of a parameter's bare number", () => {
  it("goes by what its kind reads, however that is put into words", () => {
    const unitOfKind = (kind: ReturnType<typeof pitch>) =>
      unitOf(required("any", { ...kind, takes: "other words" }, "Anything."));
    expect(unitOfKind(pitch())).toBe("rise");
    expect(unitOfKind(fraction())).toBe("fraction");
  });
});
