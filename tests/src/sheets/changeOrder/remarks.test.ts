import { addChangeOrder } from "../../../../src/sheets/changeOrder/addChangeOrder";
import { freezeOrder } from "../../../../src/sheets/signedOrder/freezeOrder";
import { takeoffPlan, USUAL_NAMES } from "../../../../src/sheets/newJob/takeoffPlan";
import { addJournalEntry } from "../../../../src/sheets/journalEntry/addJournalEntry";
import { addressBeside } from "../../../support/bid";
import { changedOrder, DAY, issue } from "../../../support/changedOrder";
import { HAND_COUNTED } from "../../../support/bid";
import { PlanWorkbook } from "../../../support/planWorkbook";

jest.setTimeout(60_000);

const ACCOUNTS = { receivable: "1200", retainage: "1250", revenue: "4000", tax: "2200" };

/** 10 panels, changed to 20 by the first change order. */
const changed = (): Promise<PlanWorkbook> => changedOrder(["panels", 10, 10]);

const change = (bid: PlanWorkbook, dateSerial = DAY) =>
  addChangeOrder(bid.host, { base: "Signed 2", now: { kind: "frozen" }, dateSerial });

describe("what a person may have overlooked is said", () => {
  it("that nothing has changed", async () => {
    const bid = await changed();
    expect((await change(bid)).remarks).toEqual(['Nothing has changed since "Signed 2".']);
  });

  it.each([
    ["its unit", "B3", "feet"],
    ["its waste", "D3", 0.1],
    ["what a pack holds", "F3", 12],
    ["in what it is ordered", "H3", "boxes"],
  ])("but not where a line differs in %s", async (_, address, typed) => {
    const bid = await changed();
    bid.type("Order", address, typed);
    expect((await change(bid)).remarks).toEqual([]);
  });

  it("that nothing has changed of a whole takeoff, whose quiet lines aren't signed", async () => {
    const bid = new PlanWorkbook(takeoffPlan(HAND_COUNTED, USUAL_NAMES));
    await freezeOrder(bid.host, DAY);
    bid.goTo("Order");
    const unchanged = { base: "Signed 1", now: { kind: "frozen" }, dateSerial: DAY } as const;
    expect((await addChangeOrder(bid.host, unchanged)).remarks).toEqual([
      'Nothing has changed since "Signed 1".',
    ]);
    bid.dispose();
  });

  it("that a change is dated before the last one", async () => {
    const bid = await changed();
    bid.type("Order", "G3", 25);
    expect((await change(bid, DAY - 1)).remarks).toEqual(['Its date is before that of "Change order 1".']);
    bid.type("Order", "G3", 26);
    const next = { base: "Signed 3", now: { kind: "frozen" }, dateSerial: DAY } as const;
    expect((await addChangeOrder(bid.host, next)).remarks).toEqual([]);
    await issue(bid, "Change order 1");
    expect((await issue(bid, "Change order 2")).remarks).toContain(
      'Its date is before that of "Change order 1".',
    );
    expect((await issue(bid, "Change order 3")).remarks.join()).not.toContain("Its date");
  });

  it("that what is posted isn't issued", async () => {
    const bid = await changed();
    const { remarks, undo } = await addJournalEntry(bid.host, "Change order 1", ACCOUNTS);
    expect(remarks).toEqual(['"Change order 1" isn\'t issued yet: issue it before this is posted.']);
    await undo();
    await issue(bid, "Change order 1");
    expect((await addJournalEntry(bid.host, "Change order 1", ACCOUNTS)).remarks).toEqual([]);
  });
});

describe("a change order that goes on from one that isn't issued", () => {
  it("isn't issued before it: what is filled in there would move it", async () => {
    const bid = await changed();
    bid.type("Order", "G3", 25);
    await change(bid);
    await expect(issue(bid, "Change order 2")).rejects.toThrow(
      'Issue "Change order 1" first: "Change order 2" goes on from it. Nothing was written.',
    );
    await issue(bid, "Change order 1");
    expect((await issue(bid, "Change order 2")).sheet).toBe("Change order 2");
  });

  it("is issued where that one has no row for it, as those of earlier versions", async () => {
    const bid = await changed();
    bid.type("Change order 1", await addressBeside(bid, "Change order 1", "This change order", 0), null);
    bid.type("Order", "G3", 25);
    await change(bid);
    expect((await issue(bid, "Change order 2")).sheet).toBe("Change order 2");
  });
});
