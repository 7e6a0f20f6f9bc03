import { catalog } from "../../../../functions/index";
import type { Cell } from "../../../../shared/cell";
import { labelInWords } from "../../../../shared/spec/parameterCaption";
import { columnData } from "../../../../src/sheets/extend/columnData";
import { guessColumn, guessColumns } from "../../../../src/sheets/extend/guessColumns";
import { readHeading } from "../../../../src/sheets/extend/headingUnit";
import { NOT_A_MEASUREMENT, SYNONYMS } from "../../../../src/sheets/extend/headingSynonyms";
import { MEANINGS, meaningOf } from "../../../../src/sheets/extend/meanings";
import { differsFromRowToRow } from "../../../../src/sheets/extend/resultOptions";

const NO_DATA = columnData([]);
const guess = (heading: string, ...cells: Cell[]) => {
  const { meaning, unit } = guessColumn(heading, columnData(cells));
  return [meaning, unit];
};

describe("the unit that the numbers below a heading show", () => {
  it.each([
    ["Pitch", [6, 8, 12], "rise"],
    ["Pitch", [0.5, 0.33], "share"],
    ["Pitch", [18, 26, 33], "degrees"],
    ["Waste", [0.1, 0.15], "fraction"],
    ["Waste", [10, 15], "hundredths"],
    ["Waste %", [1, 2], "hundredths"],
    ["Waste %", [0.05], "fraction"],
  ])("%s over %j is taken in %s", (heading, numbers, unit) => {
    expect(guess(heading, ...numbers)[1]).toBe(unit);
  });

  it.each(["Chimney width", "Window width (in)", "Eave height"])(
    "%s is not a measurement of a plane",
    (heading) => {
      expect(guess(heading, 3, 4)[0]).toBeUndefined();
    },
  );
});

/** Headings of real bids: what each means, and in what unit. Every synonym needs one here. */
const HEADINGS: readonly (readonly [heading: string, meaning: string, unit: string])[] = [
  ["Eave", "eave", "ft"],
  ["Eave (ft)", "eave", "ft"],
  ["EAVE FT", "eave", "ft"],
  ["Eaves, ft.", "eave", "ft"],
  ["Eave [mm]", "eave", "mm"],
  ["Eave - in", "eave", "in"],
  ["Eave'", "eave", "ft"],
  ["Eave length (m)", "eave", "m"],
  ["Eave (in) gross", "eave", "in"],
  ["Eave (m), both sides", "eave", "m"],
  ["Eave m (approx)", "eave", "m"],
  ["Slope angle", "pitch", "degrees"],
  ["Width", "eave", "ft"],
  ["Width (in)", "eave", "in"],
  ["Plane width, feet", "eave", "ft"],
  ["Slope length", "slopeLength", "ft"],
  ["slope length in", "slopeLength", "in"],
  ["Slope length (inches)", "slopeLength", "in"],
  ['Slope length"', "slopeLength", "in"],
  ["slope_length_ft", "slopeLength", "ft"],
  ["slopeLengthFt", "slopeLength", "ft"],
  ["Slope len. (ft)", "slopeLength", "ft"],
  ["Slope (ft)", "slopeLength", "ft"],
  ["Sloped length m", "slopeLength", "m"],
  ["Rafter", "slopeLength", "ft"],
  ["Rafter length, yd", "slopeLength", "yd"],
  ["Length up slope (ft)", "slopeLength", "ft"],
  ["Eave to ridge (ft)", "slopeLength", "ft"],
  ["Slant height cm", "slopeLength", "cm"],
  ["Run", "run", "ft"],
  ["Run (in)", "run", "in"],
  ["Run length (ft)", "length", "ft"],
  ["Half span", "run", "ft"],
  ["Pitch", "pitch", "rise"],
  ["Roof pitch", "pitch", "rise"],
  ["Pitch (x/12)", "pitch", "rise"],
  ["Pitch x:12", "pitch", "rise"],
  ["Rise in 12", "pitch", "rise"],
  ["Rise on 12", "pitch", "rise"],
  ["Rise", "pitch", "rise"],
  ["Pitch (deg)", "pitch", "degrees"],
  ["Pitch °", "pitch", "degrees"],
  ["Roof angle, degrees", "pitch", "degrees"],
  ["Slope %", "pitch", "percent"],
  ["Slope (deg)", "pitch", "degrees"],
  ["Other pitch", "otherPitch", "rise"],
  ["Minimum pitch", "minimum", "rise"],
  ["Overhang", "overhang", "ft"],
  ["Overhang (in)", "overhang", "in"],
  ["Soffit in", "overhang", "in"],
  ["Area", "area", "sqFt"],
  ["Area (sq ft)", "area", "sqFt"],
  ["Roof area SF", "area", "sqFt"],
  ["Roof area, ft²", "area", "sqFt"],
  ["Area m2", "area", "sqM"],
  ["Area (square meters)", "area", "sqM"],
  ["Sq. Ft.", "area", "sqFt"],
  ["Squares", "area", "squares"],
  ["SQ", "area", "squares"],
  ["Surface sq yd", "area", "sqYd"],
  ["Plan area (sq ft)", "planArea", "sqFt"],
  ["Footprint area m²", "planArea", "sqM"],
  ["Ceiling area", "ceilingArea", "sqFt"],
  ["Ridge LF", "length", "ft"],
  ["Hip (ft)", "length", "ft"],
  ["Valley, lin ft", "length", "ft"],
  ["Rake edge ft", "length", "ft"],
  ["Eave trim (ft)", "length", "ft"],
  ["Trim (in)", "length", "in"],
  ["Drip edge, lineal feet", "length", "ft"],
  ["LF", "length", "ft"],
  ["Length", "length", "ft"],
  ["Length (m)", "length", "m"],
  ["Qty", "quantity", "plain"],
  ["Quantity", "quantity", "plain"],
  ["Pieces", "quantity", "plain"],
  ["No.", "quantity", "plain"],
  ["Hips (no.)", "quantity", "plain"],
  ["Panels needed", "quantity", "plain"],
  ["Panels per pack", "perPack", "plain"],
  ["Pcs/box", "perPack", "plain"],
  ["Nails per lb", "perPound", "plain"],
  ["Pack size", "perPack", "plain"],
  ["Waste", "waste", "fraction"],
  ["Waste %", "waste", "hundredths"],
  ["Top (ft)", "top", "ft"],
  ["Shape", "shape", "plain"],
  ["Roll width (in)", "rollWidth", "in"],
  ["Panel width", "panelWidth", "in"],
  ["Spacing (in)", "spacing", "in"],
  ["Metal", "metal", "plain"],
  ["Thickness (in)", "thickness", "in"],
];

describe("what a heading alone means", () => {
  it.each(HEADINGS)("%s is %s in %s", (heading, meaning, unit) => {
    expect(guess(heading)).toEqual([meaning, unit]);
  });

  it.each([
    "Plane",
    "Notes",
    "Item",
    "Total",
    "Description",
    "Date",
    "Check in",
    "Built in",
    "",
    "Price",
    "Unit price",
    "Cost per sq ft",
    "$/LF",
    "Price per pack",
    "Labor hours",
    "Rate (ft)",
    "Amount",
  ])("%j is none of ours", (heading) => {
    expect(guess(heading)).toEqual([undefined, "plain"]);
  });
});

describe("what the cells below add", () => {
  it("tells a slope's pitch from its length", () => {
    expect(guess("Slope", "6:12", "8:12")).toEqual(["pitch", "rise"]);
    expect(guess("Slope", 6, 8)).toEqual(["pitch", "rise"]);
    expect(guess("Slope", 18.5, 26)).toEqual(["slopeLength", "ft"]);
    expect(guess("Slope", "18' 6\"", "14 ft")).toEqual(["slopeLength", "ft"]);
  });

  it("reads percentages", () => {
    expect(guess("Slope %", 0.5, 0.33)).toEqual(["pitch", "share"]);
    expect(guess("Slope %", 50, 33)).toEqual(["pitch", "percent"]);
    expect(guess("Waste %", 0.1)).toEqual(["waste", "fraction"]);
    expect(guess("Waste %", 10)).toEqual(["waste", "hundredths"]);
  });

  it("reads tape and pitch text under a heading that says nothing", () => {
    expect(guess("A", "18' 6\"", "12-6", null)).toEqual(["length", "ft"]);
    expect(guess("B", "6:12", "4/12")).toEqual(["pitch", "rise"]);
    expect(guess("C", "north", "south")).toEqual([undefined, "plain"]);
  });

  it("tells a number of gables from their lengths", () => {
    expect(guess("Gable edges", 2, 0, 1)[0]).toBeUndefined();
    expect(guess("Gables", 14.5, 12)).toEqual(["length", "ft"]);
  });
});

describe("a whole row of headings", () => {
  const meanings = (...headings: string[]) =>
    guessColumns(
      headings,
      headings.map(() => NO_DATA),
    ).map(({ meaning }) => meaning);

  it("gives each meaning to one column, the first", () => {
    expect(meanings("Ridge (ft)", "Hip (ft)", "Eave", "Width")).toEqual([
      "length",
      undefined,
      "eave",
      undefined,
    ]);
  });

  it("takes a plain length beside a width for the length up the slope", () => {
    expect(meanings("Plane", "Length", "Width", "Pitch")).toEqual([
      undefined,
      "slopeLength",
      "eave",
      "pitch",
    ]);
    expect(meanings("Length", "Width", "Run")).toEqual(["length", "eave", "run"]);
  });
});

describe("a new meaning", () => {
  it("is the label of a parameter", () => {
    const unknown = SYNONYMS.map(([meaning]) => meaning).filter((meaning) => !MEANINGS.includes(meaning));
    expect(
      unknown.map(
        (meaning) =>
          `"${meaning}" in src/sheets/extend/headingSynonyms.ts is not a parameter's label: correct it there, or add the parameter to a function`,
      ),
    ).toEqual([]);
  });

  it("has a heading for each of its synonyms", () => {
    const words = HEADINGS.map(([heading]) => readHeading(heading).words);
    const first = words.map((each) => SYNONYMS.find(([, pattern]) => pattern.test(each)));
    const untested = SYNONYMS.filter((synonym) => !first.includes(synonym));
    expect(
      untested.map(
        ([meaning, pattern]) =>
          `no heading tries the synonym ${String(pattern)} for "${meaning}": add one to HEADINGS in tests/src/sheets/extend/guessColumns.test.ts`,
      ),
    ).toEqual([]);
  });

  it("is recognized by its own name, except money", () => {
    const misread = MEANINGS.filter(
      (meaning) =>
        guess(labelInWords(meaning))[0] !== meaning && !NOT_A_MEASUREMENT.test(labelInWords(meaning)),
    );
    expect(
      misread.map(
        (meaning) =>
          `the heading "${labelInWords(meaning)}" doesn't mean "${meaning}": change the pattern that catches it in src/sheets/extend/headingSynonyms.ts`,
      ),
    ).toEqual([]);
  });

  it("comes from a column if it is measured on the roof; a product's size may be typed once for all rows", () => {
    const required = catalog
      .filter(({ heading, concept }) => heading !== undefined && concept !== "panel")
      .flatMap(({ parameters }) => parameters)
      .filter(({ optional }) => !optional);
    const meaningsOf = (parameters: typeof required) => [...new Set(parameters.map(meaningOf))];
    const perRow = meaningsOf(required.filter(differsFromRowToRow));
    const once = meaningsOf(required.filter((parameter) => !differsFromRowToRow(parameter)));
    expect(perRow.filter((meaning) => once.includes(meaning))).toEqual([]);
    expect(perRow).toEqual(
      expect.arrayContaining([
        "eave",
        "slopeLength",
        "run",
        "area",
        "planArea",
        "ceilingArea",
        "length",
        "quantity",
      ]),
    );
    expect(once).toEqual(
      expect.arrayContaining([
        "pitch",
        "angle",
        "minimum",
        "joint",
        "exposure",
        "course",
        "panelWidth",
        "setback",
        "fold",
        "outline",
        "panel",
        "footprint",
        "edge",
        "stock",
        "spacing",
        "perPound",
        "temperatureChange",
        "metal",
        "thickness",
        "rollWidth",
        "rollLength",
        "headLap",
        "endLap",
        "wrap",
        "overhang",
        "wall",
        "perPack",
        "cost",
        "margin",
        "rate",
        "amount",
        "cells",
        "answer",
        "expected",
      ]),
    );
  });
});
