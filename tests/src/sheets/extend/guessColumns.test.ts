import type { Cell } from "../../../../shared/cell";
import { columnData } from "../../../../src/sheets/extend/columnData";
import { guessColumn, guessColumns } from "../../../../src/sheets/extend/guessColumns";

const NO_DATA = columnData([]);
const guess = (heading: string, ...cells: Cell[]) => {
  const { meaning, unit } = guessColumn(heading, columnData(cells));
  return [meaning, unit];
};

describe("what the numbers below a heading tell of its unit", () => {
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

  it.each(["Chimney width", "Window width (in)", "Eave height"])("%s is no measure of a plane", (heading) => {
    expect(guess(heading, 3, 4)[0]).toBeUndefined();
  });
});

describe("what a heading means, by itself", () => {
  it.each([
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
  ])("%s is %s in %s", (heading, meaning, unit) => {
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

describe("what the cells below say too", () => {
  it("tells a slope's pitch from its length", () => {
    expect(guess("Slope", "6:12", "8:12")).toEqual(["pitch", "rise"]);
    expect(guess("Slope", 6, 8)).toEqual(["pitch", "rise"]);
    expect(guess("Slope", 18.5, 26)).toEqual(["slopeLength", "ft"]);
    expect(guess("Slope", "18' 6\"", "14 ft")).toEqual(["slopeLength", "ft"]);
  });

  it("takes percentages of cells for what they are", () => {
    expect(guess("Slope %", 0.5, 0.33)).toEqual(["pitch", "share"]);
    expect(guess("Slope %", 50, 33)).toEqual(["pitch", "percent"]);
    expect(guess("Waste %", 0.1)).toEqual(["waste", "fraction"]);
    expect(guess("Waste %", 10)).toEqual(["waste", "hundredths"]);
  });

  it("takes tape and pitch text for what it is where the heading says nothing", () => {
    expect(guess("A", "18' 6\"", "12-6", null)).toEqual(["length", "ft"]);
    expect(guess("B", "6:12", "4/12")).toEqual(["pitch", "rise"]);
    expect(guess("C", "north", "south")).toEqual([undefined, "plain"]);
  });

  it("tells how many gables there are from how long they are", () => {
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
