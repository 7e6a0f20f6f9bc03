import { addChangeOrder } from "../../../../src/sheets/changeOrder/addChangeOrder";
import { freezeOrder } from "../../../../src/sheets/signedOrder/freezeOrder";
import { takeoffPlan, USUAL_NAMES } from "../../../../src/sheets/newJob/takeoffPlan";
import { addressBeside, HAND_COUNTED, rowsOf, typeBeside } from "../../../support/bid";
import { DAY } from "../../../support/changedOrder";
import { PlanWorkbook } from "../../../support/planWorkbook";
import { causesOn } from "../../../support/causes";

jest.setTimeout(120_000);

let bid: PlanWorkbook;

const change = (base: string) => addChangeOrder(bid.host, { base, now: { kind: "frozen" }, dateSerial: DAY });

/** A line of a change order: what happened, ordered before, now and between, material, labor for each, labor, taxable. */
const lineOn = async (sheet: string, item: string) => {
  const line = (await rowsOf(bid, sheet)).find(([name]) => name === item) ?? [];
  return [1, 7, 8, 9, 12, 13, 14, 15].map((column) => line[column]);
};

const rename = async (from: string, to: string): Promise<void> => {
  bid.type("Trims", await addressBeside(bid, "Trims", from, 0), to);
};

const besideOn = async (sheet: string, label: string) =>
  (await rowsOf(bid, sheet)).find((line) => line[9] === label)?.[12];

/** A barn's order is frozen, and its first change order says what drip edge costs to put on. */
beforeEach(async () => {
  bid = new PlanWorkbook(takeoffPlan(HAND_COUNTED, USUAL_NAMES));
  await freezeOrder(bid.host, DAY);
  bid.type("Order", await addressBeside(bid, "Order", "underlayment", 6), 12);
  await change("Signed 1");
  const row = (await addressBeside(bid, "Change order 1", "drip edge", 0)).slice(1);
  bid.type("Change order 1", `N${row}`, 4.25);
  bid.type("Change order 1", `P${row}`, "no");
  await typeBeside(bid, "Change order 1", 3, { "Overhead on cost": 0.1, "Sales tax, state and local": 0.07 });
  bid.goTo("Order");
});

// The engine forgets what names stood for only when it goes.
afterEach(() => {
  bid.dispose();
});

describe("a trim of which only the name has changed", () => {
  it("is the same line: nothing is charged or credited for a name, and its labor and tax go on", async () => {
    await rename("drip edge", "eave flashing");
    await change("Signed 2");
    expect(await lineOn("Change order 2", "eave flashing")).toEqual(["unchanged", 9, 9, 0, 0, 4.25, 0, "no"]);
    expect((await rowsOf(bid, "Change order 2")).some(([item]) => item === "drip edge")).toBe(false);
    expect(await besideOn("Change order 2", "Total of this change")).toBe(0);
    expect((await rowsOf(bid, "Change order 2"))[2]?.[0]).toBe("");
    expect((await causesOn(bid, "Change order 2"))["eave flashing"]).toEqual([
      "drip edge is now called eave flashing",
    ]);
    bid.type("Change order 2", await addressBeside(bid, "Change order 2", "eave flashing", 0), "another");
    expect((await rowsOf(bid, "Change order 2"))[2]?.[0]).toBe("this sheet no longer lists: eave flashing");
  });

  it("counts what else moved it", async () => {
    await rename("drip edge", "eave flashing");
    bid.type("Takeoff", await addressBeside(bid, "Takeoff", "Plane B", 2), 30);
    await change("Signed 2");
    expect(await lineOn("Change order 2", "eave flashing")).toEqual([
      "changed",
      ...[9, 8, -1, -11.4, 4.25, -4.25],
      "no",
    ]);
    expect((await causesOn(bid, "Change order 2"))["eave flashing"]?.slice(0, 2)).toEqual([
      "drip edge is now called eave flashing",
      `Plane B eave 40' 0" to 30' 0": 10' 0" less eave`,
    ]);
    // A name moves no nails.
    expect((await causesOn(bid, "Change order 2"))["nails"]).toEqual([
      expect.stringMatching(/^Plane B eave 40' 0" to 30' 0": \d+ fewer nails$/),
    ]);
  });

  it("but a trim of another price is another, and so is one whose name another bears now", async () => {
    await rename("eave starter", "starter");
    bid.type("Trims", await addressBeside(bid, "Trims", "starter", 11), 12);
    await rename("ridge", "ridge cap");
    await rename("drip edge", "ridge");
    await change("Signed 2");
    expect((await lineOn("Change order 2", "eave starter"))[0]).toBe("removed");
    expect((await lineOn("Change order 2", "starter"))[0]).toBe("added");
    expect((await lineOn("Change order 2", "drip edge"))[0]).toBe("removed");
  });

  it("nor is it where its price is typed in the order alone, another one than before", async () => {
    const price = await addressBeside(bid, "Order", "ridge", 10);
    bid.type("Order", price, 21);
    await rename("ridge", "ridge cap");
    await change("Signed 2");
    expect((await lineOn("Change order 2", "ridge"))[0]).toBe("removed");
    expect((await causesOn(bid, "Change order 2"))["ridge cap"]).toContainEqual(
      expect.stringMatching(/^ridge cap is new: follows ridge/),
    );
  });
});

/** What a line of a change order says of both orders: ordered and price, before and now, and the material. */
const comparedOn = async (sheet: string, item: string) => {
  const line = (await rowsOf(bid, sheet)).find(([name]) => name === item) ?? [];
  return [7, 8, 10, 11, 12].map((column) => line[column]);
};

describe("trims that could be taken for each other", () => {
  const swap = async (one: string, other: string): Promise<void> => {
    const [first, second] = [
      await addressBeside(bid, "Trims", one, 0),
      await addressBeside(bid, "Trims", other, 0),
    ];
    bid.type("Trims", first, other);
    bid.type("Trims", second, one);
  };

  it("are compared each under its name where they swap names", async () => {
    await swap("drip edge", "ridge");
    await change("Signed 2");
    expect(await comparedOn("Change order 2", "drip edge")).toEqual([9, 5, 11.4, 19.8, -3.6]);
    expect(await comparedOn("Change order 2", "ridge")).toEqual([5, 9, 19.8, 11.4, 3.6]);
    expect((await causesOn(bid, "Change order 2"))["ridge"]).toEqual([
      "ridge follows ridge to eave: 4 more pieces",
      "ridge price of a pack 19.80 to 11.40",
    ]);
  });

  it("also where their names differ by a number", async () => {
    await rename("drip edge", "eave trim");
    await rename("eave starter", "eave trim (2)");
    await change("Signed 2");
    await swap("eave trim", "eave trim (2)");
    bid.goTo("Order");
    await change("Signed 3");
    expect(await comparedOn("Change order 3", "eave trim")).toEqual([9, 9, 11.4, 12.75, 12.15]);
    expect((await causesOn(bid, "Change order 3"))["eave trim"]).toEqual([
      "eave trim price of a pack 11.40 to 12.75",
    ]);
  });
});
