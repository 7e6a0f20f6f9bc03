import { addChangeOrder } from "../../src/sheets/changeOrder/addChangeOrder";
import {
  issueActiveChangeOrder,
  type IssuedChangeOrder,
} from "../../src/sheets/changeOrder/issueChangeOrder";
import { freezeOrder } from "../../src/sheets/signedOrder/freezeOrder";
import { PlanWorkbook } from "./planWorkbook";
import { smallOrder } from "./smallOrder";

/** The first of June 2026. */
export const DAY = 46_174;

/** An order frozen, and a change order to 20 of its first item: its lines stand in rows 6 and on. */
export const changedOrder = async (...lines: Parameters<typeof smallOrder>[0]): Promise<PlanWorkbook> => {
  const bid = new PlanWorkbook(smallOrder(lines));
  await freezeOrder(bid.host, DAY);
  bid.type("Order", "G3", 20);
  await addChangeOrder(bid.host, { base: "Signed 1", now: { kind: "frozen" }, dateSerial: DAY });
  return bid;
};

/** Issues a change order, as a person does with its sheet in front. */
export const issue = (bid: PlanWorkbook, sheet: string): Promise<IssuedChangeOrder> => {
  bid.goTo(sheet);
  return issueActiveChangeOrder(bid.host);
};
