import { addChangeOrder } from "../../../../src/sheets/changeOrder/addChangeOrder";
import { addJournalEntry } from "../../../../src/sheets/journalEntry/addJournalEntry";
import { readArea } from "../../../../src/workbook/address";
import { formulaAt } from "../../../../src/workbook/contents";
import { addressBeside, typeBeside } from "../../../support/bid";
import { changedOrder, DAY, issue } from "../../../support/changedOrder";
import type { PlanWorkbook } from "../../../support/planWorkbook";

jest.setTimeout(60_000);

const ACCOUNTS = { receivable: "1200", retainage: "1250", revenue: "4000", tax: "2200" };

const change = (bid: PlanWorkbook, base: string) =>
  addChangeOrder(bid.host, { base, now: { kind: "frozen" }, dateSerial: DAY });

/** 10 panels and 5 ridges, changed to 20 panels: they stand in its rows 6 and 7. */
const changed = (): Promise<PlanWorkbook> => changedOrder(["panels", 10, 10], ["ridge", 5, 20]);

describe("overwritten formulas of a change order", () => {
  it("are named, and nothing is issued, posted or gone on from", async () => {
    const bid = await changed();
    bid.type("Change order 1", "M6", 1);
    const refusal =
      'M6 on "Change order 1" was calculated and has been overwritten: undo that, or make the change order again. Nothing was written.';
    await expect(issue(bid, "Change order 1")).rejects.toThrow(refusal);
    await expect(addJournalEntry(bid.host, "Change order 1", ACCOUNTS)).rejects.toThrow(refusal);
    await expect(change(bid, "Signed 2")).rejects.toThrow(refusal);
  });

  it("are told from those that were cleared", async () => {
    const bid = await changed();
    bid.type("Change order 1", "B6", null);
    await expect(issue(bid, "Change order 1")).rejects.toThrow(
      'B6 on "Change order 1" was calculated and has been cleared: undo that, or make the change order again. Nothing was written.',
    );
    bid.type("Change order 1", "J6", 3);
    bid.type("Change order 1", "B7", null);
    await expect(issue(bid, "Change order 1")).rejects.toThrow(
      'J6 on "Change order 1" was calculated and has been overwritten; B6:B7 on "Change order 1" were calculated and have been cleared: undo that',
    );
  });

  it("are named as blocks, the amounts too", async () => {
    const bid = await changed();
    for (const [address, typed] of [
      ["J6", 3],
      ["J7", 3],
      ["B6", "as agreed"],
    ] as const)
      // prettier-ignore
      bid.type("Change order 1", address, typed);
    const profit = await addressBeside(bid, "Change order 1", "Profit, additions", 3);
    bid.type("Change order 1", profit, 500);
    await expect(issue(bid, "Change order 1")).rejects.toThrow(
      `B6, J6:J7, and ${profit} on "Change order 1" were calculated and have been overwritten`,
    );
  });

  it("aren't taken for the reason where a label is gone by which they are found", async () => {
    const bid = await changed();
    bid.type("Change order 1", await addressBeside(bid, "Change order 1", "Profit, additions", 0), "Ours");
    await expect(change(bid, "Signed 2")).rejects.toThrow(
      '"Change order 1" has no "Profit, additions" any more, by which its figures are found',
    );
  });

  it("are no reason where the change order before was edited since", async () => {
    const bid = await changed();
    bid.type("Order", "G3", 25);
    await change(bid, "Signed 2");
    await typeBeside(bid, "Change order 2", 3, { "Contract sum as signed": 6_000 });
    await typeBeside(bid, "Change order 1", 3, { "Contract sum as signed": 5_000 });
    await expect(change(bid, "Signed 3")).rejects.toThrow(
      '"Change order 2" has no total: "Change order 1" was edited since this was made',
    );
  });

  it("leave what is meant to be typed free, and a remark below the lines", async () => {
    const bid = await changed();
    await typeBeside(bid, "Change order 1", 3, { "Contract sum as signed": 5_000, "Overhead on cost": 0.1 });
    for (const [address, typed] of [
      ["N6", 2],
      ["P7", "no"],
      ["R6", "as agreed"],
      ["A8", "a remark"],
    ] as const)
      // prettier-ignore
      bid.type("Change order 1", address, typed);
    expect((await issue(bid, "Change order 1")).sheet).toBe("Change order 1");
  });

  it("are the contract sum too where it goes on from the change order before", async () => {
    const bid = await changed();
    await typeBeside(bid, "Change order 1", 3, { "Contract sum as signed": 5_000 });
    bid.type("Order", "G3", 25);
    await change(bid, "Signed 2");
    await typeBeside(bid, "Change order 2", 3, { "Contract sum as signed": 6_000 });
    const contract = await addressBeside(bid, "Change order 2", "Contract sum as signed", 3);
    await expect(issue(bid, "Change order 2")).rejects.toThrow(
      `${contract} on "Change order 2" was calculated and has been overwritten`,
    );
  });

  it("but not where the one before had none: it is typed on the first that bears it", async () => {
    const bid = await changed();
    await issue(bid, "Change order 1");
    bid.type("Order", "G3", 25);
    await change(bid, "Signed 2");
    const contract = await addressBeside(bid, "Change order 2", "Contract sum as signed", 3);
    const sheet = (await bid.host.contents()).sheets.get("Change order 2");
    expect(sheet && formulaAt(sheet, readArea(contract).from)).toBe("");
    await typeBeside(bid, "Change order 2", 3, { "Contract sum as signed": 6_000 });
    expect((await issue(bid, "Change order 2")).sheet).toBe("Change order 2");
  });
});
