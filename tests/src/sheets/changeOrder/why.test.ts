import { addChangeOrder } from "../../../../src/sheets/changeOrder/addChangeOrder";
import { freeze } from "../../../../src/sheets/signedBase/freeze";
import { takeOffPlan, USUAL_NAMES } from "../../../../src/sheets/takeOff/takeOff";
import { addressBeside, HAND_COUNTED, rowsOf } from "../../../support/bid";
import { PlanWorkbook } from "../../../support/planWorkbook";

jest.setTimeout(120_000);

const DAY = 46_174;

const signedBarn = async (): Promise<PlanWorkbook> => {
  const bid = new PlanWorkbook(takeOffPlan(HAND_COUNTED, USUAL_NAMES));
  await freeze(bid.host, DAY);
  bid.goTo("Order");
  return bid;
};

/** The sentences about an item, once the order is frozen again. */
const whyOf = async (bid: PlanWorkbook, item: string): Promise<string[]> => {
  await addChangeOrder(bid.host, { base: "Signed 1", now: { kind: "frozen" }, dateSerial: DAY });
  const rows = await rowsOf(bid, "Change order 1");
  const why = rows.findIndex(([label]) => label === "Why it moved");
  const at = rows.findIndex(([label], row) => row > why && label === item);
  if (at < 0) throw new Error(`nothing is said of ${item}`);
  const end = rows.findIndex(([label, sentence], row) => row > at && ((label ?? "") !== "" || !sentence));
  return rows.slice(at, end).map(([, sentence]) => String(sentence));
};

/** 18 courses, each 10 ft shorter by panels of 2 ft: 5 fewer in each. */
describe("why a quantity moved", () => {
  it("leaves out what was only typed in another way", async () => {
    const bid = await signedBarn();
    bid.type("Take-off", await addressBeside(bid, "Take-off", "Plane A", 6), "9:12");
    bid.type("Take-off", await addressBeside(bid, "Take-off", "Plane B", 4), `216"`);
    bid.type("Take-off", await addressBeside(bid, "Take-off", "Plane B", 2), 30);
    expect(await whyOf(bid, "panels")).toEqual([`Plane B eave 40' 0" to 30' 0": 90 fewer panels laid`]);
  });

  it("tells a figure of the order that was typed over from what was worked out before", async () => {
    const bid = await signedBarn();
    bid.type("Order", await addressBeside(bid, "Order", "ridge", 6), 9);
    expect(await whyOf(bid, "ridge")).toEqual(["ridge to order 5 to 9, typed over what was worked out"]);
  });
});
