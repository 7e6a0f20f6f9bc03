import { matchNames, type ItemNames } from "../../../../src/sheets/changeOrder/nameMatching";
import type { Measurement } from "../../../../src/sheets/trace/measurements";

type Typed = Readonly<Record<string, string | number>>;

/** Rows with what was typed into them. */
const measurements = (rows: Readonly<Record<string, Typed>>, sheet = "Takeoff"): Measurement[] =>
  Object.entries(rows).flatMap(([row, inputs]) =>
    Object.entries(inputs).map(([heading, value]): Measurement => ({
      sheet,
      row,
      heading,
      unit: "",
      value,
      kind: "input",
    })),
  );

const NO_ITEMS: ItemNames = { isItem: () => false, mayBeRenamed: () => true };
const ALL_ITEMS: ItemNames = { isItem: () => true, mayBeRenamed: () => true };

/** How the earlier rows are called now. */
const namesNow = (
  earlier: readonly Measurement[],
  later: readonly Measurement[],
  items = NO_ITEMS,
): string[] => [
  ...new Set(matchNames(earlier, later, "Order", items).earlier.map(({ sheet, row }) => `${sheet} ${row}`)),
];

const PORCH = { Eave: 12, Pitch: 4 };
const SHED = { Eave: 9, Pitch: 3 };

describe("measurements of another time", () => {
  it("keep their names where nothing was renamed, whatever changed", () => {
    const [then, now] = [
      measurements({ North: PORCH, South: SHED }),
      measurements({ North: SHED, South: PORCH }),
    ];
    expect(matchNames(then, now, "Order", NO_ITEMS)).toEqual({
      earlier: then,
      later: now,
      formerNames: new Map(),
    });
  });

  it("of rows of one name follow what they hold, and one that went is told apart", () => {
    expect(
      namesNow(measurements({ Porch: PORCH, "Porch (2)": SHED }), measurements({ Porch: SHED })),
    ).toEqual(["Takeoff Porch (before)", "Takeoff Porch"]);
  });

  it("of rows without a name follow what they hold where rows were inserted above", () => {
    expect(
      namesNow(
        measurements({ "row 54": { Edge: "hip" }, "row 55": { Edge: "valley", Length: 9 } }),
        measurements({ "row 56": { Edge: "hip", Length: 20 }, "row 57": { Edge: "valley", Length: 9 } }),
      ),
    ).toEqual(["Takeoff row 56", "Takeoff row 57"]);
  });

  it("of renamed sheets are told apart by their values where they hold the same rows", () => {
    const [garage, shed] = [{ North: PORCH }, { North: SHED }];
    expect(
      namesNow(
        [...measurements(garage, "Garage"), ...measurements(shed, "Shed")],
        [...measurements(shed, "Second"), ...measurements(garage, "First")],
      ),
    ).toEqual(["First North", "Second North"]);
  });

  it("of a sheet that shares less than half aren't those of another", () => {
    expect(
      namesNow(measurements({ North: PORCH }, "Roof"), measurements({ Nails: { Price: 4 } }, "Prices")),
    ).toEqual(["Roof North"]);
  });

  it("never take one item of the order for another, though they are alike", () => {
    const waste = { Waste: 0, "Per pack": 1 };
    const [then, now] = [measurements({ hip: waste }, "Order"), measurements({ eave: waste }, "Order")];
    expect(namesNow(then, now)).toEqual(["Order hip"]);
    expect(namesNow(measurements({ hip: waste }), measurements({ eave: waste }))).toEqual(["Takeoff eave"]);
  });

  it("of rows that hold the same take new names in their order, but items only where one of each time fits", () => {
    const [two, others] = [measurements({ A: PORCH, B: PORCH }), measurements({ C: PORCH, D: PORCH })];
    expect(namesNow(two, others)).toEqual(["Takeoff C", "Takeoff D"]);
    expect(namesNow(two, others, ALL_ITEMS)).toEqual(["Takeoff A", "Takeoff B"]);
    const [one, other] = [measurements({ A: PORCH }), measurements({ C: PORCH })];
    expect(namesNow(one, others, ALL_ITEMS)).toEqual(["Takeoff A"]);
    expect(namesNow(two, other, ALL_ITEMS)).toEqual(["Takeoff A", "Takeoff B"]);
    expect(namesNow(one, other, ALL_ITEMS)).toEqual(["Takeoff C"]);
  });

  it("leave out what a row that is gone has left behind", () => {
    const then = measurements({ South: { ...PORCH, "Gable edges": 2 } });
    expect(
      matchNames(then, measurements({ "row 8": { "Gable edges": 2 } }), "Order", NO_ITEMS).later,
    ).toEqual([]);
    expect(
      matchNames(then, measurements({ "row 8": { "Gable edges": 1 } }), "Order", NO_ITEMS).later,
    ).toHaveLength(1);
  });
});
