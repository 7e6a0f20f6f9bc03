import type { Cell } from "../../../../shared/cell";
import { addChangeOrder } from "../../../../src/sheets/changeOrder/addChangeOrder";
import { freezeOrder } from "../../../../src/sheets/signedOrder/freezeOrder";
import { takeoffPlan, USUAL_NAMES } from "../../../../src/sheets/newJob/takeoffPlan";
import { addressBeside, HAND_COUNTED, rowsOf, typeBeside, type BidWorkbook } from "../../../support/bid";
import { FIRST_AMOUNTS, FIRST_LINES, SECOND_AMOUNTS, SECOND_LINES } from "../../../support/changesByHand";
import { calculatedExcel } from "../../../support/calculatedExcel";
import { causesOn } from "../../../support/causes";
import { PlanWorkbook } from "../../../support/planWorkbook";

jest.setTimeout(180_000);

/** 2026-06-01 */
const FIRST_OF_JUNE = 46_174;

const shown = (cell: Cell | undefined): Cell => cell ?? "";

const linesOf = async (bid: BidWorkbook, sheet: string): Promise<Cell[][]> => {
  const rows = await rowsOf(bid, sheet);
  const head = rows.findIndex(([first]) => first === "Item");
  const end = rows.findIndex(([first], row) => row > head && (first ?? "") === "");
  return rows
    .slice(head + 1, end)
    .map((row) => [0, 1, 7, 8, 9, 10, 11, 12, 14, 16].map((column) => shown(row[column])));
};

const amountsOf = async (bid: BidWorkbook, sheet: string): Promise<Record<string, Cell>> => {
  const rows = await rowsOf(bid, sheet);
  return Object.fromEntries(
    rows.filter((row) => String(row[9]) in FIRST_AMOUNTS).map((row) => [String(row[9]), shown(row[12])]),
  );
};

describe.each([
  ["the local workbook", () => new PlanWorkbook(takeoffPlan(HAND_COUNTED, USUAL_NAMES))],
  ["Excel's stand-in", () => calculatedExcel(takeoffPlan(HAND_COUNTED, USUAL_NAMES))],
] as const)("two change orders in %s", (_, open: () => BidWorkbook) => {
  const bid = open();

  beforeAll(async () => {
    await freezeOrder(bid.host, FIRST_OF_JUNE);
    bid.type("Takeoff", await addressBeside(bid, "Takeoff", "Plane A", 6), 16);
    bid.type("Takeoff", await addressBeside(bid, "Takeoff", "Plane B", 4), `19' 6"`);
    bid.goTo("Order");
    await addChangeOrder(bid.host, {
      base: "Signed 1",
      now: { kind: "frozen" },
      dateSerial: FIRST_OF_JUNE + 20,
    });
    await typeBeside(bid, "Change order 1", 3, {
      "Overhead on cost": 0.1,
      "Profit on cost and overhead": 0.05,
      "Sales tax, state and local": 0.0725,
      Retainage: 0.1,
      "Days added by this change": 2,
      "Contract sum as signed": 25000,
    });
    bid.type("Change order 1", await addressBeside(bid, "Change order 1", "panels", 13), 21.5);

    bid.type("Takeoff", await addressBeside(bid, "Takeoff", "Plane B", 2), 30);
    bid.type("Trims", await addressBeside(bid, "Trims", "ridge", 11), 21.15);
    await addChangeOrder(bid.host, {
      base: "Signed 2",
      now: { kind: "frozen" },
      dateSerial: FIRST_OF_JUNE + 30,
    });
    await typeBeside(bid, "Change order 2", 3, {
      "Both, on deductions": "given back",
      "Tax is rounded": "on the total",
      "Days added by this change": 3,
    });
  });

  it("agree line by line with what was worked out by hand", async () => {
    expect(await linesOf(bid, "Change order 1")).toEqual(FIRST_LINES);
    expect(await linesOf(bid, "Change order 2")).toEqual(SECOND_LINES);
  });

  it("agree to the cent in every amount, down to the contract's new sum", async () => {
    expect(await amountsOf(bid, "Change order 1")).toEqual(FIRST_AMOUNTS);
    expect(await amountsOf(bid, "Change order 2")).toEqual(SECOND_AMOUNTS);
  });

  it("say why each quantity and price moved", async () => {
    expect(await causesOn(bid, "Change order 1")).toMatchObject({
      panels: [
        `Plane A pitch 9 in 12 to 16 in 12: 6 more courses, 120 more panels laid`,
        `Plane B slope length 18' 0" to 19' 6": 2 more courses, 40 more panels laid`,
      ],
      // Courses of 40 ft 2 in: 9 instead of 7 on A, 7 still on B.
      underlayment: [
        `Plane A pitch 9 in 12 to 16 in 12: 80' 4" more underlayment`,
        `Plane B slope length 18' 0" to 19' 6"`,
        "these changes together: 1 more roll",
      ],
    });
    expect(await causesOn(bid, "Change order 2")).toMatchObject({
      panels: [`Plane B eave 40' 0" to 30' 0": 100 fewer panels laid`],
      "drip edge": [`Plane B eave 40' 0" to 30' 0": 1 fewer piece`],
    });
    expect(await causesOn(bid, "Change order 2")).toMatchObject({
      ridge: ["ridge price of a pack 19.80 to 21.15"],
    });
  });

  it("leave what was signed as it was, protected", async () => {
    for (const sheet of ["Signed 1", "Signed 2", "Signed 3"]) {
      expect(bid.isProtected(sheet)).toBe(true);
      const rows = await rowsOf(bid, sheet);
      expect(rows.find(([label]) => label === "Status")?.[1]).toBe("as signed");
    }
    const signed = await rowsOf(bid, "Signed 1");
    expect(signed.find(([label]) => label === "panels")?.[6]).toBe(80);
    expect(
      signed.some((row) => row.slice(0, 6).join("|") === "Takeoff|Plane B|Slope, if taped|ft|18 ft|input"),
    ).toBe(true);
  });
});
